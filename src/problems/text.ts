/**
 * Text by who may read it. The reader brands each text key of the YAML once, from the schema; fixed
 * words for the homeowner are branded where they are written (`src/words`). A homeowner document is
 * built from `PublicText` only, so a crew note, a cost or an office remark does not compile there.
 */
export type PublicText = string & { readonly audience: 'homeowner' };
export type CrewText = string & { readonly audience: 'crew' };
export type OfficeText = string & { readonly audience: 'office' };

/** Text the crew may read: their own and everything that is public. */
export type CrewReadable = CrewText | PublicText;
