import type { Decimal } from 'decimal.js';
import type { Pace, Rate } from '../units/index.ts';
import type { CrewText, PublicText } from './text.ts';

export type Paper = 'letter' | 'a4';
/** What is added to a mix. */
export type Additive =
  | 'water-reducer'
  | 'retarder'
  | 'accelerator'
  | 'calcium-chloride'
  | 'fibers'
  | 'shrinkage-reducer';

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
    /** How many a pack gives, and what it costs; null where the company names none. */
    readonly barTies: { readonly packCount: number; readonly priceUsd: Decimal } | null;
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
