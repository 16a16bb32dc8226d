import type { Coating, Existing, Hollow, Site } from '../calculate/job.ts';
import type { ExistingInput, SiteSection } from '../read/index.ts';
import { cuFtPerCuYd, type Quantity } from '../units/index.ts';
import { SHIPPED } from './constants.ts';
import { underSlabOf } from './fixtures.ts';
import { flightOf } from './flights.ts';
import { inCoreUnit, inCoreUnitOrNull, inUnitOf, mapThings } from './quantity.ts';
import { shapeOf } from './shape.ts';
import { pointOf } from './shape-base.ts';

export function siteOf(input: SiteSection): Site {
  const { access, emergency } = input;
  return {
    existing: mapThings(ofKind(input.existing ?? {}, isFlat), existingOf),
    hollow: mapThings(ofKind(input.existing ?? {}, isHollow), hollowOf),
    posts: mapThings(input.posts ?? {}, (id, { label, count, footing }) => ({
      id,
      label,
      count,
      footing: { diameterIn: inCoreUnit(footing.diameter), depthIn: inCoreUnit(footing.depth) },
    })),
    oldSteps: mapThings(input['old-steps'] ?? {}, (id, steps) => ({
      id,
      label: steps.label,
      material: steps.material ?? SHIPPED.material,
      steel: steps.steel ?? SHIPPED.steel,
      widthIn: inCoreUnit(steps.width),
      riserCount: steps.risers,
      riserIn: inCoreUnit(steps.riser),
      treadIn: inCoreUnit(steps.tread),
      landingIn: inCoreUnit(steps.landing),
    })),
    flights: mapThings(input.flights ?? {}, flightOf),
    green: mapThings(input.green ?? {}, (id, green) => ({
      id,
      label: green.label,
      looseCuYd: inUnitOf(green['loose-volume'], cuFtPerCuYd),
      looseLbPerCuFt: inCoreUnit(green['loose-weight']),
    })),
    chip: mapThings(input.chip ?? {}, (id, { label, area, thickness }) => ({
      id,
      label,
      areaSqFt: inCoreUnit(area),
      thicknessIn: inCoreUnit(thickness),
    })),
    underSlab: mapThings(input['under-slab'] ?? {}, underSlabOf),
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
      truckAt: access['truck-at'] === undefined ? null : pointOf(access['truck-at']),
      chuteReaches: access['chute-reaches'] ?? [],
      wayExtraIn: inCoreUnitOrNull(access['way-extra']) ?? SHIPPED.wayExtraIn,
      waySlope: inCoreUnitOrNull(access['way-slope']),
      wayWidthIn: inCoreUnitOrNull(access['way-width']),
      washout: access.washout ?? null,
      leftOver: access['left-over'] ?? null,
      gateCode: access['gate-code'] ?? null,
      crewNote: access['crew-note'] ?? null,
    },
    baseRoomLb: inCoreUnitOrNull(input['base-room']),
    locateTicket: input['locate-ticket'] ?? null,
    emergency: {
      hospital: emergency.hospital,
      hospitalAddress: emergency['hospital-address'],
      hospitalPhone: emergency['hospital-phone'],
      crossStreet: emergency['cross-street'],
    },
  };
}

type FlatInput = ExistingInput & {
  readonly thickness: Quantity<'length'>;
  readonly 'thickness-is': NonNullable<ExistingInput['thickness-is']>;
};
type HollowInput = ExistingInput & { readonly walls: NonNullable<ExistingInput['walls']> };

/** Either one or the other: the checks refuse what has both and what has neither. */
function isFlat(input: ExistingInput): input is FlatInput {
  return input.thickness !== undefined && input['thickness-is'] !== undefined;
}

function isHollow(input: ExistingInput): input is HollowInput {
  return input.walls !== undefined;
}

function ofKind<K extends ExistingInput>(
  things: Readonly<Record<string, ExistingInput>>,
  isOf: (input: ExistingInput) => input is K,
): Readonly<Record<string, K>> {
  return Object.fromEntries(
    Object.entries(things).flatMap(([id, thing]) => (isOf(thing) ? [[id, thing] as const] : [])),
  );
}

function existingOf(id: string, input: FlatInput): Existing {
  return {
    id,
    label: input.label,
    shape: shapeOf(input),
    material: input.material ?? SHIPPED.material,
    thicknessIn: inCoreUnit(input.thickness),
    thicknessIs: input['thickness-is'],
    thickestIn: inCoreUnitOrNull(input.thickest),
    coating: coatingOf(input),
    soilStuckIn: inCoreUnitOrNull(input['soil-stuck']) ?? SHIPPED.soilStuckIn,
    steel: input.steel ?? SHIPPED.steel,
    breakOut: input['break-out'] ?? SHIPPED.breakOut,
    unitWeightLbPerCuFt: inCoreUnitOrNull(input['unit-weight']),
  };
}

/** @throws {RangeError} If a layer has no thickness, which the checks refuse. */
function coatingOf({ coating, 'coating-thickness': thickness }: ExistingInput): Coating | null {
  if (coating === undefined) return null;
  if (coating !== 'tile' && coating !== 'overlay') return { kind: coating };
  if (thickness === undefined) throw new RangeError(`a coating of ${coating} needs its thickness`);
  return { kind: coating, thicknessIn: inCoreUnit(thickness) };
}

/** @throws {RangeError} If its walls are of asphalt or are to be sawn, which the checks refuse. */
function hollowOf(id: string, input: HollowInput): Hollow {
  const {
    walls,
    footing,
    fill,
    material = SHIPPED.material,
    'break-out': breakOut = SHIPPED.breakOut,
  } = input;
  if (material === 'asphalt') throw new RangeError(`the walls of ${id} cannot be of asphalt`);
  if (breakOut === 'saw-and-lift') throw new RangeError(`the walls of ${id} cannot be sawn and lifted`);
  return {
    id,
    label: input.label,
    shape: shapeOf(input),
    material,
    walls: { thicknessIn: inCoreUnit(walls.thickness), heightIn: inCoreUnit(walls.height) },
    footing:
      footing === undefined
        ? null
        : { widthIn: inCoreUnit(footing.width), thicknessIn: inCoreUnit(footing.thickness) },
    fill: fill === undefined ? null : { material: fill.material, depthIn: inCoreUnit(fill.depth) },
    steel: input.steel ?? SHIPPED.steel,
    breakOut,
    unitWeightLbPerCuFt: inCoreUnitOrNull(input['unit-weight']),
  };
}
