import type { Decimal } from 'decimal.js';
import type { Pace, Rate } from '../units/index.ts';
import type { JobEdit } from './edits.ts';
import type { Lid, UnderSlab } from './fixture-things.ts';
import type { Rule } from './rule.ts';
import type { TapedPoint, TapedShape } from './taped-shape.ts';
import type { CrewText, OfficeText, PublicText } from './text.ts';
import type { TieIns } from './tie-in-things.ts';

export type { Lid, UnderSlab } from './fixture-things.ts';
export type { PlacedBase, TapedBase, TapedShape } from './taped-shape.ts';
export type { Drain, GarageFloor, KeptDry, PublicWalk, PublicWalkWay, TieIns } from './tie-in-things.ts';

/**
 * One job, resolved: every reference followed, every constant filled in, all lengths in inches,
 * areas in sq ft, weights in lb, times in hours, money as Decimal dollars. Nothing in here follows
 * from another value in here; whatever does is a figure, so that an edit cannot leave a stale value.
 */
export type Job = {
  /** Folder name, used in output paths. */
  readonly id: string;
  readonly number: PublicText;
  readonly label: PublicText;
  readonly client: Client;
  readonly address: PublicText;
  readonly preparedOn: string;
  readonly revision: number;
  readonly stage: Stage;
  readonly unitSystem: UnitSystem;
  readonly rules: readonly Rule[];
  readonly acknowledged: readonly Acknowledgement[];
  readonly site: Site;
  readonly build: Build;
  /** Null where the job says nothing of heights; then nothing of them shows. */
  readonly heights: Heights | null;
  /** Parts of walls that stay clear of what is beside them; none without heights. */
  readonly walls: Readonly<Record<string, WallPart>>;
  /** Lines to draw profiles along; none without heights. */
  readonly profiles: Readonly<Record<string, Profile>>;
  /** Lids that are set to the height of the new surface; none without heights. */
  readonly lids: Readonly<Record<string, Lid>>;
  /** Where new slabs meet what does not move; nothing without heights. */
  readonly tieIns: TieIns;
  readonly plan: Plan;
  readonly pour: Pour;
  readonly price: PriceTerms;
  readonly company: Company;
};

export type UnitSystem = 'us' | 'metric';
export type Stage = 'bid' | 'signed' | 'scheduled' | 'working' | 'done' | 'paid';
export type Paper = 'letter' | 'a4';

export type Client = {
  readonly name: PublicText;
  readonly phone: CrewText | null;
  readonly email: OfficeText | null;
};

/** A finding that somebody looked at and accepted, with the reason. */
export type Acknowledgement = {
  readonly finding: string;
  readonly where: string;
  readonly reason: OfficeText;
};

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

export type Use = 'driveway' | 'walk' | 'patio' | 'porch';
export type Finish = 'broom' | 'float' | 'exposed-aggregate';
export type Exposure = 'no-freezing' | 'freezing' | 'freezing-and-deicers';
export type MeshStyle = '6x6-w1.4' | '6x6-w2.1' | '6x6-w2.9' | '6x6-w4.0' | '4x4-w1.4' | '4x4-w2.9';
export type BarSize = 3 | 4 | 5;

export type BarMaterial = 'steel' | 'glass-fibre';

export type Reinforcement =
  | { readonly kind: 'none' }
  | {
      readonly kind: 'mesh';
      readonly style: MeshStyle;
      readonly from: 'sheets' | 'rolls';
      /** From the top of the slab to the wire; null takes the usual one. */
      readonly coverIn: number | null;
    }
  | {
      readonly kind: 'bars';
      readonly material: BarMaterial;
      readonly size: BarSize;
      readonly spacingIn: number;
      /** Of the bars that run across the slab; null where both ways are alike. */
      readonly spacingAcrossIn: number | null;
      /** From the top and the edges of the slab to the bars; null takes the usual one. */
      readonly coverIn: number | null;
      /** What is done at the outer corners: the outer bars cross and are tied, or bent pieces go round. */
      readonly corners: 'crossed' | 'bent';
    };

/** An edge that is thicker than its slab. */
export type ThickenedEdge = {
  readonly edge: number;
  /** From the top of the slab to the bottom of the edge. */
  readonly depthIn: number;
  /** Of its flat bottom. */
  readonly widthIn: number;
  /** How far from there it takes to rise to the underside of the slab; 0 where it rises upright. */
  readonly taperIn: number;
};

/** How control joints are made: with a groover while it is finished, or sawn. */
export type JointCut = 'tooled' | 'wet-sawn' | 'early-entry';

/** A joint whose course the job says; it runs on to the next edge or joint. */
export type JointLine = {
  readonly id: string;
  /** Both on the shape, as its cut-outs are. */
  readonly from: TapedPoint;
  /** Null runs square to the edge nearest to where it starts. */
  readonly to: TapedPoint | null;
};

export type SlabJointing = {
  readonly cut: JointCut;
  readonly lines: Readonly<Record<string, JointLine>>;
  /** Whether the panels between those lines are divided further. */
  readonly propose: 'rest' | 'nothing';
  /** Whether joints and isolation strips get a sealant. */
  readonly sealed: boolean;
};

export type EdgeJointKind = 'free' | 'isolated' | 'dowelled' | 'tied' | 'keyed';
/** What a slab is joined to along an edge. */
export type JoinedTo = 'new-slab' | 'old-slab' | 'garage' | 'house' | 'public';

/** What is done along one edge of a slab, where it is said. */
export type EdgeJoint = {
  /** From 1, as on the plan. */
  readonly edge: number;
  readonly how: EdgeJointKind;
  /** Null where nobody said: what stands at the edge. */
  readonly into: JoinedTo | null;
  /** Whether what is drilled into has tendons; null where nobody said. */
  readonly postTensioned: boolean | null;
  /** How that is known. */
  readonly knownBy: CrewText | null;
  /** The drawing of the authority that is followed into public concrete. */
  readonly detail: CrewText | null;
};

export type Slab = {
  readonly id: string;
  readonly label: PublicText;
  readonly use: Use;
  readonly shape: TapedShape;
  readonly thicknessIn: number;
  /** In the order of their edges. */
  readonly thickenedEdges: readonly ThickenedEdge[];
  /** How high the form tops stand above what the forms stand on; null where nobody said. */
  readonly formHeightIn: number | null;
  /** From the form tops down to the base, probed, on average; null before that. */
  readonly probedIn: number | null;
  /** Compacted thickness of the base under the slab; 0 where none is laid. */
  readonly baseIn: number;
  /** Fabric between the ground and the base. */
  readonly geotextile: boolean;
  /** Whether it is held to the rules of public ways. */
  readonly publicWay: boolean;
  /** Soil dug out below the old slab before the base; 0 where none. */
  readonly digIn: number;
  readonly fall: {
    readonly slope: number;
    readonly towards: PublicText;
    /** Clockwise from up the plan; null where nobody said. */
    readonly directionDeg: number | null;
  };
  readonly reinforcement: Reinforcement;
  /** Edges whose joint is said; the others follow from what stands there. */
  readonly edgeJoints: readonly EdgeJoint[];
  readonly finish: Finish;
  /** A joint spacing of the job's own; null takes the table's. */
  readonly jointSpacingIn: number | null;
  readonly joints: SlabJointing;
  /** Id of a form board of the company. */
  readonly board: string;
  /** Id of a form strip of the company that its curves are bent of; null where boards are sawn to bend. */
  readonly curveForm: string | null;
  /** What is done where the board is lower than the slab is thick. */
  readonly shortBoard: 'drop-base' | 'pack';
  readonly note: PublicText | null;
  readonly crewNote: CrewText | null;
};

/** A straight flight of solid steps that ends in a landing of the same width. */
export type Steps = {
  readonly id: string;
  readonly label: PublicText;
  readonly widthIn: number;
  readonly rise: StepsRise;
  readonly treadIn: number;
  /** 0 where it ends on something that is there. */
  readonly landingIn: number;
  /** How much its treads rise from front to back, so that water runs off; 0 where they are level. */
  readonly treadSlope: number;
  /** For treads and landing along the ground; null where nobody said. */
  readonly roomIn: number | null;
};

/** Risers as the job says them; or the points of the heights at the foot and at the top, and their count or null. */
export type StepsRise =
  | { readonly kind: 'taped'; readonly riserCount: number; readonly riserIn: number }
  | {
      readonly kind: 'heights';
      readonly from: string;
      readonly to: string;
      readonly riserCount: number | null;
    };

/** What is added to a mix. */
export type Additive =
  | 'water-reducer'
  | 'retarder'
  | 'accelerator'
  | 'calcium-chloride'
  | 'fibers'
  | 'shrinkage-reducer';

export type Build = {
  readonly slabs: Readonly<Record<string, Slab>>;
  readonly steps: Readonly<Record<string, Steps>>;
  readonly mix: {
    /** Null takes the least class for the exposure. */
    readonly strengthPsi: number | null;
    /** Null takes what the exposure and the stone ask for. */
    readonly airRatio: number | null;
    /** Water to cementitious material, by weight; null where nobody said. */
    readonly waterCementRatio: number | null;
    /** Of the cementitious material, by weight; 0 where nobody said. */
    readonly flyAshRatio: number;
    readonly slagRatio: number;
    readonly additives: readonly Additive[];
    readonly slumpIn: number;
    readonly aggregateIn: number;
    readonly exposure: Exposure;
  };
};

/** What a rod stood on: something that stays, the ground, or an existing thing that goes. */
export type StoodOn =
  | { readonly kind: 'stays' }
  | { readonly kind: 'dirt' }
  | { readonly kind: 'existing'; readonly id: string };

/** A point whose height counts. */
export type LevelPoint = {
  readonly id: string;
  readonly label: PublicText;
  readonly at: TapedPoint;
  /** As written, above the datum or below it; null where it is read in the notes. */
  readonly heightIn: number | null;
  /** Fixed cannot move; finish is chosen for the new surface; existing is what is there now. */
  readonly kind: 'fixed' | 'finish' | 'existing';
  /** Null for a finish, which is not there yet. */
  readonly stoodOn: StoodOn | null;
};

/** One line of level notes: a known height, or what the rod on a station was read at. */
export type LevelNote = {
  /** A station: the id of a point, or a name of its own. */
  readonly on: string;
  readonly kind: 'height' | 'backsight' | 'foresight';
  readonly valueIn: number;
};

export type Heights = {
  readonly datum: CrewText;
  /** In the order taken; empty where every height is written. */
  readonly notes: readonly LevelNote[];
  /** What notes may miss a known height by; null where there are none. */
  readonly closingErrorIn: number | null;
  readonly points: Readonly<Record<string, LevelPoint>>;
};

/** A part of a wall that a new surface must not cover or come near. */
export type WallPart = {
  readonly id: string;
  readonly label: PublicText;
  readonly kind: 'siding' | 'weep-screed' | 'brick-weeps' | 'door-sill' | 'vent' | 'window-well';
  readonly at: TapedPoint;
  /** Its lowest edge above the datum, below it where negative. */
  readonly heightIn: number;
  /** What is beside it when all is done. */
  readonly beside:
    | { readonly kind: 'slab'; readonly id: string }
    | { readonly kind: 'earth'; readonly heightIn: number };
  /** A least clearance of the job's own; null takes the table's. */
  readonly leastIn: number | null;
};

/** A line across slabs along which heights are drawn. */
export type Profile = {
  readonly id: string;
  readonly label: CrewText;
  /** Two points or more. */
  readonly along: readonly TapedPoint[];
  /** Past its last slab, each so far from the one before; none in most. */
  readonly beyond: readonly {
    readonly label: CrewText;
    readonly awayIn: number;
    /** Above the datum. */
    readonly heightIn: number;
  }[];
};

export type Plan = {
  readonly startsOn: string;
  /** Ids of `company.labor.people`. */
  readonly crew: readonly string[];
  /** Ids of `company.trailers` that come to this job. */
  readonly trailers: readonly string[];
  /** How many drive at once, each a truck like the company's. */
  readonly driverCount: number;
  /** The last day on which the truck is free to haul; null where nobody said. */
  readonly haulByOn: string | null;
  /** The day of the pour, where it is not the first one that is free. */
  readonly poursOn: string | null;
};

/** A forecast for the day of the pour. */
export type Weather = {
  readonly on: string;
  /** The concrete as it is expected to arrive. */
  readonly concreteF: number;
  /** In the order of the day; never none. */
  readonly times: readonly WeatherTime[];
  /** The rest is null where nobody said. */
  readonly lowBeforeF: number | null;
  readonly rainBeforeIn: number | null;
  readonly sunriseHr: number | null;
  readonly sunsetHr: number | null;
  /** Mean air of each day after the pour, the first for the 24 h that follow it; empty where nobody said. */
  readonly comingF: readonly number[];
};

export type WeatherTime = {
  /** From midnight. */
  readonly atHr: number;
  readonly airF: number;
  readonly humidityRatio: number;
  readonly windMph: number;
  readonly rainChanceRatio: number | null;
  readonly rainIn: number | null;
  readonly sky: 'clear' | 'some-clouds' | 'overcast' | null;
};

/** How the face is kept wet while it gains strength. */
export type Curing = 'curing-compound' | 'wet-cover' | 'sheeting';

/** The day concrete is placed; null wherever nobody said. */
export type Pour = {
  readonly firstTruckHr: number | null;
  readonly noiseAllowed: { readonly fromHr: number; readonly toHr: number } | null;
  readonly curing: Curing | null;
  /** What has to stick to the face later; null where nothing does. */
  readonly laterCoat: 'sealer' | 'stain' | 'overlay' | null;
  readonly weather: Weather | null;
};

/** An option or a hidden condition: a name and a list of edits. */
export type HiddenCondition = {
  readonly id: string;
  readonly label: PublicText;
  readonly edits: readonly JobEdit[];
};

export type PriceTerms = {
  readonly hidden: Readonly<Record<string, HiddenCondition>>;
  readonly otherCosts: Readonly<
    Record<string, { readonly id: string; readonly label: OfficeText; readonly costUsd: Decimal }>
  >;
  readonly notIncluded: readonly PublicText[];
};

export type Person = { readonly id: string; readonly label: CrewText; readonly wage: Rate };

export type MachineKind =
  | 'loader-with-breaker'
  | 'jackhammer'
  | 'walk-behind-saw'
  | 'cut-off-saw'
  | 'plate-compactor'
  | 'mixer'
  | 'hand-grinder'
  | 'hammer-drill';

export type Machine = {
  readonly id: string;
  readonly label: CrewText;
  readonly kind: MachineKind;
  readonly cost: Rate;
  readonly cab: 'enclosed' | 'open' | 'none';
  /** Water is fed to the blade or point all the time. */
  readonly wet: boolean;
  /** The most it lifts at once; null where nobody said. */
  readonly liftsLb: number | null;
  /** Of a plate compactor; null takes what is usual for a small plate. */
  readonly plate: {
    readonly widthIn: number | null;
    readonly travelFtPerHr: number | null;
    /** The most it compacts at once, measured when compacted. */
    readonly liftIn: number | null;
    /** Over each lift in each of two directions. */
    readonly passesEachWay: number | null;
  };
  /** As it rides on a trailer; null where nobody said, and nothing is figured of its tie-downs. */
  readonly tiedDown: { readonly weightLb: number; readonly lengthIn: number } | null;
};

export type Trailer = {
  readonly id: string;
  readonly label: CrewText;
  readonly grossRatingLb: number;
  readonly axleRatingLb: number;
  readonly emptyLb: number;
  readonly box: { readonly lengthIn: number; readonly widthIn: number; readonly heightIn: number };
};

export type TowVehicle = {
  readonly label: CrewText;
  readonly towRatingLb: number;
  readonly combinedRatingLb: number;
  readonly grossRatingLb: number;
  readonly curbLb: number;
  /** Crew, tools and fuel that ride in it. */
  readonly carriesLb: number;
  readonly hitchRatingLb: number;
  readonly cost: Rate;
};

export type Stream =
  | 'clean-concrete'
  | 'concrete-with-steel'
  | 'coated'
  | 'masonry'
  | 'asphalt'
  | 'soil'
  | 'green'
  | 'other';

export type DumpPlace = {
  readonly id: string;
  readonly label: CrewText;
  readonly address: CrewText;
  readonly accepts: readonly Stream[];
  readonly fee: Rate;
  /** The least charge a visit; 0 where none. */
  readonly minimumUsd: Decimal;
  /** Added to the fee of a load that holds any of the stream, over the whole of the load. */
  readonly surcharges: { readonly [stream in Stream]?: Rate };
  /** Instead of the fee, for a load that goes back with base; null where it makes no difference. */
  readonly feeWithBase: Rate | null;
  /** Whether streams that it accepts may share a load. */
  readonly mixedLoads: boolean;
  /** What a load with anything else in it costs; null where nobody said. */
  readonly rejectedUsd: Decimal | null;
  /** The largest piece it takes; null where nobody said. */
  readonly largestPiece: { readonly sideIn: number; readonly thicknessIn: number } | null;
  /** Hours of the day, from midnight; null where nobody said. */
  readonly open: { readonly fromHr: number; readonly toHr: number; readonly lastLoadHr: number } | null;
  /** Days of the week on which it is open, 1 for Monday to 7 for Sunday. */
  readonly openOn: readonly number[];
  readonly distanceMi: number;
  /** One way, loaded. */
  readonly driveHr: number;
  /** At the gate, scale and tip. */
  readonly turnHr: number;
  readonly sellsBase: boolean;
  /** Its own price of base, and the least for a load of it; null where it asks what the supplier asks. */
  readonly base: { readonly price: Rate; readonly minimumUsd: Decimal } | null;
};

export type ConcreteSupplier = {
  readonly label: CrewText;
  readonly phone: CrewText;
  readonly price: Rate;
  readonly incrementCuYd: number;
  readonly truckCuYd: number;
  /** Fee a load below this many yards. */
  readonly shortLoadBelowCuYd: number;
  readonly shortLoadFeeUsd: Decimal;
  /** By the load or the volume, on every delivery; null where there is none. */
  readonly fuelFee: Rate | null;
  /** By the load or the volume, on a Saturday; null where there is none. */
  readonly saturdayFee: Rate | null;
  /** What an additive costs more, by the volume or the load. */
  readonly additives: { readonly [additive in Additive]?: Rate | undefined };
  /** From batching to empty, as the ticket states; null where nobody said. */
  readonly dischargeLimitHr: number | null;
  /** From batching to the truck standing on the job; null where nobody said. */
  readonly onTheWayHr: number | null;
  /** Free to unload, a yard; null where nobody said. */
  readonly freeHrPerCuYd: number | null;
  /** By the hour past that; null where there is none. */
  readonly waitFee: Rate | null;
  /** How long before it is needed the last load is called; null where nobody said. */
  readonly callAheadHr: number | null;
  readonly noticeDays: number;
  /** How long before the first truck an order can be put off without a fee; null where nobody said. */
  readonly freeCancelHr: number | null;
};

/** A wheelbarrow or a buggy; one person drives each. */
export type Carrier = {
  readonly holdsCuFt: number;
  readonly count: number;
  /** There and back alike. */
  readonly speed: Pace;
  /** Filling and tipping. */
  readonly turnHr: number;
  readonly steepestSlope: number;
  readonly narrowestIn: number;
};

export type Pump = {
  readonly reachIn: number;
  readonly pace: Pace;
  /** At the hose, beside those who place. */
  readonly peopleCount: number;
  readonly visitUsd: Decimal;
  readonly byVolume: Rate | null;
  /** What stays in hopper and hose. */
  readonly keepsCuYd: number;
};

/** How concrete gets from the truck to a slab; null for what the company does not name. */
export type Placing = {
  readonly chute: { readonly reachIn: number; readonly pace: Pace } | null;
  readonly wheelbarrow: Carrier | null;
  readonly buggy: (Carrier & { readonly cost: Rate }) | null;
  readonly pump: Pump | null;
};

export type BagSupplier = {
  readonly label: CrewText;
  readonly phone: CrewText;
  readonly price: Rate;
  readonly yieldCuFt: number;
  readonly weightLb: number;
  /** Bags mixed and placed an hour by one person. */
  readonly mixing: Pace;
};

export type BaseSupplier = {
  readonly label: CrewText;
  readonly phone: CrewText;
  readonly price: Rate;
  readonly incrementTon: number;
  readonly deliveryUsd: Decimal;
  readonly deliveryTon: number;
  readonly compactedLbPerCuFt: number;
  /** Loose volume over compacted volume. */
  readonly looseOverCompacted: number;
  readonly noticeDays: number;
};

export type GeotextileSupplier = {
  readonly label: CrewText;
  readonly phone: CrewText;
  readonly rollWidthIn: number;
  readonly rollLengthIn: number;
  /** How far one piece lies over the next. */
  readonly lapIn: number;
  /** For a roll, or for a square foot of it; whole rolls are bought. */
  readonly price: Rate;
};

export type BarSupplier = {
  readonly label: CrewText;
  readonly phone: CrewText;
  /** Lengths as sold, one or more. */
  readonly stocksIn: readonly number[];
  /** Lap in bar diameters. */
  readonly lapDiameters: number;
  /** What cutting a bar takes away; null: nothing of steel, a saw cut of glass fibre. */
  readonly kerfIn: number | null;
  readonly price: Rate;
  readonly noticeDays: number;
};

export type Suppliers = {
  readonly concrete: ConcreteSupplier;
  readonly bagged: BagSupplier;
  readonly base: BaseSupplier;
  /** Null where the company names none. */
  readonly geotextile: GeotextileSupplier | null;
  readonly mesh: {
    readonly label: CrewText;
    readonly phone: CrewText;
    readonly sheetLengthIn: number;
    readonly sheetWidthIn: number;
    readonly lapIn: number;
    readonly price: Rate;
    /** Null where it sells none. */
    readonly roll: { readonly lengthIn: number; readonly widthIn: number; readonly priceUsd: Decimal } | null;
    readonly noticeDays: number;
  };
  readonly bars: BarSupplier;
  /** Null where the company names none. */
  readonly glassFibreBars:
    | (BarSupplier & { readonly bentPriceUsd: Decimal; readonly bentNoticeDays: number })
    | null;
  /** Dowels and tie bars, cut to length; null where the company names nobody. */
  readonly dowels: {
    readonly label: CrewText;
    readonly phone: CrewText;
    readonly dowelPriceUsd: Decimal;
    readonly tiePriceUsd: Decimal;
    /** Holes that a cartridge of epoxy fills. */
    readonly holesPerCartridgeCount: number;
    readonly cartridgePriceUsd: Decimal;
    readonly noticeDays: number;
  } | null;
  readonly sundries: {
    readonly label: CrewText;
    readonly phone: CrewText;
    readonly curingCoverageSqFtPerGal: number;
    /** On a broomed or washed face; null takes three quarters of the other. */
    readonly curingRoughCoverageSqFtPerGal: number | null;
    /** Covers or sheeting, by the square foot; null where the company names no price. */
    readonly sheetingPrice: Rate | null;
    readonly curingPackGal: number;
    readonly curingPriceUsd: Decimal;
    readonly isolationStripIn: number;
    readonly isolationPriceUsd: Decimal;
    /** What a tube of sealant fills, and what it costs; null where the company names none. */
    readonly sealant: { readonly fillsIn: number; readonly priceUsd: Decimal } | null;
    readonly chairPriceUsd: Decimal;
  };
};

export type Board = {
  readonly id: string;
  /** The true (dressed) height. */
  readonly heightIn: number;
  readonly lengthIn: number;
  readonly onHandCount: number;
  readonly priceUsd: Decimal;
};

/** A thin strip that curves are formed with. */
export type Strip = {
  readonly id: string;
  readonly thicknessIn: number;
  /** Null where strips are ripped to the height of the form. */
  readonly heightIn: number | null;
  readonly lengthIn: number;
  /** How far a strip laps the next one, and the form at the end of its curve. */
  readonly lapIn: number;
  /** Which way it is bent to the grain of its face. */
  readonly bent: 'across-grain' | 'along-grain';
  /** A radius of the company's own; null takes the table's. */
  readonly leastRadiusIn: number | null;
  readonly onHandCount: number;
  readonly priceUsd: Decimal;
};

/** Tasks that a company has a pace for only where it works that way. */
export type MethodTask = 'break-out-by-hand' | 'saw-and-lift' | 'chip' | 'drill';

export type TaskId =
  | 'set-up'
  | 'saw-cut'
  | 'break-out'
  | MethodTask
  | 'dig'
  | 'base'
  | 'form'
  | 'reinforce'
  | 'place'
  | 'finish'
  | 'cure'
  | 'saw-joints'
  | 'strip'
  | 'backfill'
  | 'clean';

/** How fast a task goes with so many people and, where one is used, a machine. */
export type ProductionRow = {
  readonly task: TaskId;
  readonly pace: Pace;
  readonly people: number;
  readonly machine: string | null;
  /** Who runs the tool; null means any one person, counted on the safe side. */
  readonly operator: string | null;
};

export type Production = Readonly<Record<Exclude<TaskId, MethodTask>, ProductionRow>> &
  Readonly<Partial<Record<MethodTask, ProductionRow>>>;

export type Payment = { readonly label: PublicText; readonly shareRatio: number };

export type Company = {
  readonly name: PublicText;
  readonly address: PublicText;
  readonly phone: PublicText;
  readonly email: PublicText;
  readonly licence: PublicText;
  readonly insurance: PublicText;
  readonly paper: Paper;
  readonly labor: {
    readonly burdenRatio: number;
    readonly dayHr: number;
    /** From midnight. */
    readonly dayStartsHr: number;
    readonly people: Readonly<Record<string, Person>>;
  };
  readonly machines: Readonly<Record<string, Machine>>;
  readonly trailers: Readonly<Record<string, Trailer>>;
  readonly towVehicle: TowVehicle;
  readonly loadReserveLb: number;
  readonly loadingHr: number;
  /** Dropping one trailer and taking another that is full; null where the truck waits while it is loaded. */
  readonly swapHr: number | null;
  /** Where machines come from that ride on the trailers; null where nobody said, and none does. */
  readonly yard: { readonly distanceMi: number; readonly driveHr: number; readonly tieDownHr: number } | null;
  readonly places: Readonly<Record<string, DumpPlace>>;
  readonly suppliers: Suppliers;
  readonly forms: {
    readonly boards: Readonly<Record<string, Board>>;
    readonly strips: Readonly<Record<string, Strip>>;
    /** How far a whole board may stick out past a corner; null where nothing limits it. */
    readonly runPastIn: number | null;
    /** Null takes what a saw usually cuts away. */
    readonly sawKerfIn: number | null;
    readonly stakeSpacingIn: number;
    /** On curves; null takes the published one. */
    readonly stakeSpacingCurvedIn: number | null;
    readonly stakePriceUsd: Decimal;
    readonly stakesOnHandCount: number;
    /** From brace to brace behind the forms; null where they are not braced. */
    readonly kickerSpacingIn: number | null;
    readonly screwsPerStakeCount: number | null;
    readonly releaseCoverageSqFtPerGal: number | null;
  };
  readonly allowances: {
    /** How low the base lies on average. */
    readonly baseUnevennessIn: number;
    readonly spillRatio: number;
    /** How far forms bow out, on average; 0 where nobody said. */
    readonly formBulgeIn: number;
    readonly baseMarginIn: number;
    /** How far a walk along the sides may miss where it began, and a diagonal its check. */
    readonly closingErrorIn: number;
    /** How far two pieces measured apart may miss each other and still be joined. */
    readonly joiningGapIn: number;
  };
  readonly production: Production;
  readonly placing: Placing;
  readonly pricing: {
    /** Both are shares of the price, not of the cost. */
    readonly overheadRatio: number;
    readonly marginRatio: number;
    readonly taxRatio: number;
    readonly taxOn: 'nothing' | 'materials' | 'price';
    readonly minimumChargeUsd: Decimal;
    readonly payments: readonly Payment[];
    readonly validDays: number;
    readonly warranty: PublicText;
    readonly clauses: readonly { readonly question: PublicText; readonly answer: PublicText }[];
  };
  readonly safety: {
    readonly firstAidPerson: CrewText;
    readonly kitPlace: CrewText;
    readonly calls: PublicText;
  };
};
