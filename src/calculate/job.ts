import type { Decimal } from 'decimal.js';
import type { Additive, Company } from './company-things.ts';
import type { JobEdit } from './edits.ts';
import type { Lid } from './fixture-things.ts';
import type { Rule } from './rule.ts';
import type { Site } from './site-things.ts';
import type { TapedPoint, TapedShape } from './taped-shape.ts';
import type { CrewText, OfficeText, PublicText } from './text.ts';
import type { TieIns } from './tie-in-things.ts';

export type {
  Additive,
  BagSupplier,
  BarSupplier,
  BaseSupplier,
  Board,
  Carrier,
  Company,
  ConcreteSupplier,
  DumpPlace,
  GeotextileSupplier,
  Machine,
  MachineKind,
  MethodTask,
  Paper,
  Payment,
  Person,
  Placing,
  Production,
  ProductionRow,
  Pump,
  Stream,
  Strip,
  Suppliers,
  TaskId,
  TowVehicle,
  Trailer,
} from './company-things.ts';
export type { Lid, UnderSlab } from './fixture-things.ts';
export type {
  BreakOut,
  Chip,
  Coating,
  Existing,
  Flight,
  FlightFoot,
  FootSpot,
  Green,
  Hollow,
  Material,
  OldSteps,
  PhotoPoint,
  Posts,
  Site,
  Steel,
} from './site-things.ts';
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
