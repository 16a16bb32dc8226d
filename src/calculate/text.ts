export type { CrewReadable, CrewText, OfficeText, PublicText } from '../problems/text.ts';
