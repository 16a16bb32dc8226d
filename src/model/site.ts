import type { Existing, Site } from '../calculate/job.ts';
import type { ExistingInput, SiteSection } from '../read/index.ts';
import { SHIPPED } from './constants.ts';
import { inCoreUnit, inCoreUnitOrNull, mapThings } from './quantity.ts';
import { shapeOf } from './shape.ts';
import { pointOf } from './shape-base.ts';

export function siteOf(input: SiteSection): Site {
  const { access, emergency } = input;
  return {
    existing: mapThings(input.existing ?? {}, existingOf),
    northDeg: inCoreUnitOrNull(input.north),
    photoPoints: mapThings(input['photo-points'] ?? {}, (id, { label, at, looking }) => ({
      id,
      label,
      at: pointOf(at),
      lookingDeg: inCoreUnit(looking),
    })),
    stays: input.stays ?? [],
    access: {
      truckStands: access['truck-stands'],
      note: access.note ?? null,
      gateCode: access['gate-code'] ?? null,
      crewNote: access['crew-note'] ?? null,
    },
    locateTicket: input['locate-ticket'] ?? null,
    emergency: {
      hospital: emergency.hospital,
      hospitalAddress: emergency['hospital-address'],
      hospitalPhone: emergency['hospital-phone'],
      crossStreet: emergency['cross-street'],
    },
  };
}

function existingOf(id: string, input: ExistingInput): Existing {
  return {
    id,
    label: input.label,
    shape: shapeOf(input),
    material: input.material ?? SHIPPED.material,
    thicknessIn: inCoreUnit(input.thickness),
    thicknessIs: input['thickness-is'],
    steel: input.steel ?? SHIPPED.steel,
    unitWeightLbPerCuFt: inCoreUnitOrNull(input['unit-weight']),
  };
}
