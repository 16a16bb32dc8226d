import type { UnderSlab } from './fixture-things.ts';
import type { TapedPoint, TapedShape } from './taped-shape.ts';
import type { CrewText, PublicText } from './text.ts';

export type Material = 'concrete' | 'brick' | 'block' | 'asphalt';
export type Steel = 'none' | 'mesh' | 'bars';
/** What a thing is taken out with. */
export type BreakOut = 'breaker' | 'jackhammer' | 'saw-and-lift';

/** What lies on concrete that goes: a film (paint, sealer, epoxy), or a layer with a weight of its own. */
export type Coating =
  | { readonly kind: 'paint' | 'sealer' | 'epoxy' }
  | { readonly kind: 'tile' | 'overlay'; readonly thicknessIn: number };

/** Something flat that is there now and goes. */
export type Existing = {
  readonly id: string;
  readonly label: PublicText;
  readonly shape: TapedShape;
  readonly material: Material;
  readonly thicknessIn: number;
  readonly thicknessIs: 'measured' | 'assumed';
  /** The most it may be where it is assumed; null takes an inch more than the thickness. */
  readonly thickestIn: number | null;
  readonly coating: Coating | null;
  /** Soil that comes up with it; 0 where none. */
  readonly soilStuckIn: number;
  readonly steel: Steel;
  readonly breakOut: BreakOut;
  /** A unit weight of the job's own; null takes the table's. */
  readonly unitWeightLbPerCuFt: number | null;
};

/**
 * Something that stands and goes, hollow inside: a planter, a column. Its outline is the outer face of its
 * walls; it is its walls, its footing and its fill.
 */
export type Hollow = {
  readonly id: string;
  readonly label: PublicText;
  readonly shape: TapedShape;
  readonly material: Exclude<Material, 'asphalt'>;
  readonly walls: { readonly thicknessIn: number; readonly heightIn: number };
  /** A ring of concrete below the walls, as wide on either side of their middle; null where none. */
  readonly footing: { readonly widthIn: number; readonly thicknessIn: number } | null;
  readonly fill: { readonly material: 'soil' | 'gravel' | 'concrete'; readonly depthIn: number } | null;
  /** In whatever of it is concrete. */
  readonly steel: Steel;
  readonly breakOut: Exclude<BreakOut, 'saw-and-lift'>;
  /** Of the walls; null takes the table's. */
  readonly unitWeightLbPerCuFt: number | null;
};

/** Posts that go with their round footings of concrete; the holes they leave are filled. */
export type Posts = {
  readonly id: string;
  readonly label: PublicText;
  readonly count: number;
  readonly footing: { readonly diameterIn: number; readonly depthIn: number };
};

/** A straight flight of solid steps that goes, with the landing it ends in. */
export type OldSteps = {
  readonly id: string;
  readonly label: PublicText;
  readonly material: Exclude<Material, 'asphalt'>;
  readonly steel: Steel;
  readonly widthIn: number;
  readonly riserCount: number;
  readonly riserIn: number;
  readonly treadIn: number;
  readonly landingIn: number;
};

/** Where along the lowest step of a flight, seen from below. */
export type FootSpot = 'left' | 'middle' | 'right';

/**
 * How far the new surface lies above the one that is there [in], below 0 where it lies lower; or where the
 * ends of the foot are on the plan, and heights tell.
 */
export type FlightFoot =
  | { readonly kind: 'typed'; readonly changeIn: Readonly<Record<FootSpot, number>> }
  | { readonly kind: 'ends'; readonly left: TapedPoint; readonly right: TapedPoint };

/** A flight of steps that stays while the surface at its foot is built anew. */
export type Flight = {
  readonly id: string;
  readonly label: PublicText;
  /** Each as it is now, from the bottom up; never none. */
  readonly risersIn: readonly number[];
  readonly treadIn: number;
  readonly widthIn: number;
  readonly foot: FlightFoot;
  /** What could be laid on the treads, and how much of it on the landing; null where nobody said. */
  readonly topping: {
    readonly thinnestIn: number;
    readonly thickestIn: number;
    /** 0 where none may be laid on it. */
    readonly landingIn: number;
  } | null;
};

/** Shrubs and the like, as they lie on a trailer. */
export type Green = {
  readonly id: string;
  readonly label: PublicText;
  readonly looseCuYd: number;
  readonly looseLbPerCuFt: number;
};

/** A coating chipped off concrete that stays. */
export type Chip = {
  readonly id: string;
  readonly label: PublicText;
  readonly areaSqFt: number;
  readonly thicknessIn: number;
};

/** Where somebody stands on the plan to take a photo. */
export type PhotoPoint = {
  readonly id: string;
  readonly label: CrewText;
  readonly at: TapedPoint;
  /** Clockwise from up the plan. */
  readonly lookingDeg: number;
};

export type Site = {
  readonly existing: Readonly<Record<string, Existing>>;
  /** No id of these is one of `existing`: both stand under one key in the files. */
  readonly hollow: Readonly<Record<string, Hollow>>;
  readonly posts: Readonly<Record<string, Posts>>;
  readonly oldSteps: Readonly<Record<string, OldSteps>>;
  readonly flights: Readonly<Record<string, Flight>>;
  readonly green: Readonly<Record<string, Green>>;
  readonly chip: Readonly<Record<string, Chip>>;
  readonly underSlab: Readonly<Record<string, UnderSlab>>;
  /** Which way north is on the plan, clockwise from up; null where nobody said. */
  readonly northDeg: number | null;
  readonly photoPoints: Readonly<Record<string, PhotoPoint>>;
  readonly stays: readonly PublicText[];
  readonly access: {
    readonly truckStands: PublicText;
    readonly note: PublicText | null;
    /** Where the rear of the truck stands on the plan; null where nobody said. */
    readonly truckAt: TapedPoint | null;
    /** Slabs along which the truck can drive, so that its chute reaches all of them. */
    readonly chuteReaches: readonly string[];
    /** What the way from the truck is longer than straight. */
    readonly wayExtraIn: number;
    /** The steepest of it; null where nobody said. */
    readonly waySlope: number | null;
    /** Its narrowest place; null where nobody said. */
    readonly wayWidthIn: number | null;
    /** Where chutes and tools are washed out; null where nobody said. */
    readonly washout: CrewText | null;
    /** Where concrete goes that is left over; null where nobody said. */
    readonly leftOver: CrewText | null;
    readonly gateCode: CrewText | null;
    readonly crewNote: CrewText | null;
  };
  /** The most base that may lie on the job before the rubble is gone; null where there is room for all. */
  readonly baseRoomLb: number | null;
  readonly locateTicket: CrewText | null;
  readonly emergency: {
    readonly hospital: PublicText;
    readonly hospitalAddress: PublicText;
    readonly hospitalPhone: PublicText;
    readonly crossStreet: PublicText;
  };
};
