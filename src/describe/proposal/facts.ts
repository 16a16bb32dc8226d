import type {
  Coating,
  Curing,
  Exposure,
  Finish,
  PublicWalkWay,
  Reinforcement,
  UnitSystem,
  Use,
} from '../../calculate/job.ts';
import type { Price } from '../../calculate/price/index.ts';
import type { PublicText } from '../../calculate/text.ts';
import type { Point } from '../../geometry/index.ts';
import type { FrameFacts } from '../parts/frame.ts';
import type { PlanArea } from '../parts/plan-drawing.ts';

/**
 * All that the homeowner may be told, and nothing else: public text, sizes, prices. There is no
 * field here that could hold a cost, a wage, a crew note or a gate code.
 */
export type ProposalFacts = {
  readonly frame: FrameFacts;
  readonly unitSystem: UnitSystem;
  readonly company: {
    readonly licence: PublicText;
    readonly insurance: PublicText;
    readonly warranty: PublicText;
    readonly clauses: readonly { readonly question: PublicText; readonly answer: PublicText }[];
  };
  readonly slabs: readonly {
    readonly id: string;
    readonly label: PublicText;
    readonly use: Use;
    readonly finish: Finish;
    readonly areaSqFt: number;
    readonly thicknessIn: number;
    readonly baseIn: number;
    readonly hasFabric: boolean;
    readonly fall: { readonly slope: number; readonly towards: PublicText };
    readonly reinforcement: Reinforcement;
    readonly panelCount: number;
    readonly longestPanelIn: number;
    readonly curveRadiiIn: readonly number[];
    readonly alongHouseFt: number;
    readonly alongStaysFt: number;
    /** What goes into concrete that is there already; where both do, both. */
    readonly joinedBy: { readonly dowels: boolean; readonly ties: boolean };
    readonly note: PublicText | null;
    /** Names of the lids in it, and of the pipes under it. */
    readonly lids: readonly PublicText[];
    readonly pipes: readonly PublicText[];
    readonly plan: PlanArea;
    /** Where water runs on it, from the heights or as it is planned; none where neither tells. */
    readonly falls: readonly { readonly at: Point; readonly towardsRad: number }[];
    /** Of the surface through the heights; null where there is none. */
    readonly water: {
      readonly slope: number;
      readonly standsDeepIn: number;
      /** Which way it falls beside the house; null where it does not stand along it. */
      readonly atHouse: 'from-it' | 'to-it' | null;
    } | null;
  }[];
  readonly steps: readonly {
    readonly label: PublicText;
    readonly widthIn: number;
    readonly riserCount: number;
    readonly riserIn: number;
    readonly treadIn: number;
  }[];
  /** Flights that stay and whose lowest step changes: as it is, and the least and most it will be. */
  readonly flights: readonly {
    readonly label: PublicText;
    readonly nowIn: number;
    readonly leastIn: number;
    readonly mostIn: number;
  }[];
  /** Drains in new slabs, and where their water goes; null where it goes nowhere yet. */
  readonly drains: readonly { readonly label: PublicText; readonly to: PublicText | null }[];
  /** Garage floors, and how far the new slab stays below each. */
  readonly garages: readonly { readonly label: PublicText; readonly lipIn: number }[];
  /** Public walks that are not where they should be. */
  readonly publicWalks: readonly PublicWalkFacts[];
  readonly mix: { readonly strengthPsi: number; readonly exposure: Exposure };
  readonly removal: {
    readonly things: readonly {
      readonly label: PublicText;
      readonly areaSqFt: number;
      readonly thicknessIn: number;
      /** Null where it was measured. */
      readonly thickestIn: number | null;
      readonly coating: Coating['kind'] | null;
    }[];
    readonly hollow: readonly {
      readonly label: PublicText;
      readonly wallIn: number;
      readonly heightIn: number;
      readonly hasFooting: boolean;
      readonly fill: 'soil' | 'gravel' | 'concrete' | null;
    }[];
    readonly posts: readonly { readonly label: PublicText; readonly count: number }[];
    readonly oldSteps: readonly {
      readonly label: PublicText;
      readonly riserCount: number;
      readonly widthIn: number;
    }[];
    readonly green: readonly { readonly label: PublicText; readonly looseCuYd: number }[];
    readonly chip: readonly {
      readonly label: PublicText;
      readonly areaSqFt: number;
      readonly thicknessIn: number;
    }[];
    readonly soilUnder: readonly PublicText[];
    readonly totalLb: number;
  };
  readonly stays: readonly PublicText[];
  readonly prices: {
    readonly groups: readonly { readonly group: PriceGroup; readonly amount: Price }[];
    readonly minimum: Price | null;
    readonly tax: Price | null;
    readonly total: Price;
  };
  readonly payments: readonly {
    readonly label: PublicText;
    readonly shareRatio: number;
    readonly amount: Price;
  }[];
  readonly hidden: readonly { readonly label: PublicText; readonly difference: Price }[];
  readonly notIncluded: readonly PublicText[];
  readonly access: { readonly truckStands: PublicText; readonly note: PublicText | null };
  readonly calendar: {
    readonly startsOn: string;
    readonly finishesOn: string;
    readonly walkOn: string;
    readonly driveOn: string;
    /** All of these null where nothing is placed. */
    readonly curing: { readonly method: Curing; readonly untilOn: string } | null;
    /** The day after the pour on which we come back to saw; null where that is none. */
    readonly sawOn: string | null;
    readonly heavyOn: string | null;
    readonly sealOn: string | null;
    /** Whether the dates follow the temperatures that are expected. */
    readonly isEstimated: boolean;
    /** Whether they are counted for milder days than are expected. */
    readonly isTooMild: boolean;
    readonly hasDriveway: boolean;
    readonly days: readonly { readonly on: string; readonly phase: CalendarPhase | 'cure' }[];
  };
  readonly validUntil: string;
};

export type PriceGroup = 'tear-out-and-haul' | 'base-and-forms' | 'concrete' | 'finish-and-clean' | 'other';
export type CalendarPhase = 'tear-out' | 'base-and-forms' | 'pour' | 'strip-and-clean';

/** A line down to the walk [rise over run]; below 0 where it rises. */
type TwoEnds = { readonly left: number; readonly right: number };

export type PublicWalkFacts = {
  readonly label: PublicText;
  readonly authority: PublicText;
  readonly word: PublicText | null;
  readonly way: PublicWalkWay | null;
  /** How much lower the walk lies than it should; below 0 where it stands higher. */
  readonly settledIn: TwoEnds;
  readonly mostLipIn: number;
  readonly slopeNow: TwoEnds;
  readonly slopeThen: TwoEnds;
  readonly transitionSlope: number;
  /** Null where the slab never gets down to the walk. */
  readonly transitionIn: TwoEnds | null;
  readonly bevelSlope: number;
  readonly panelIn: number;
  readonly panelAreaSqFt: number;
  readonly ownerPays: { readonly price: Price; readonly shareRatio: number; readonly own: Price } | null;
};
