import type { Decimal } from 'decimal.js';
import type { Severity } from '../calculate/rule.ts';
import type { PublicText } from '../calculate/text.ts';
import type { Drawing } from './drawing/index.ts';

/*
 * View models: finished pages as data. Strings carry their units, dates are in words, rows are in
 * order, totals are there, every key is present and `null` means absent on purpose. Templates
 * place; they do not add, round, sort or choose.
 *
 * `T` is the text a document may show: the proposal takes `PublicText` only, so nothing of the
 * office or the crew compiles into it.
 */

export type Paper = 'letter' | 'a4';

export type DocumentKind =
  | 'proposal'
  | 'work-order'
  | 'materials'
  | 'safety'
  | 'calculation'
  | 'binder'
  | 'site-walk';

/** What stands round every page, and the title block of the first. */
export type FrameView<T extends string = string> = {
  readonly kind: DocumentKind;
  readonly language: string;
  /** The title of the document, for the browser and the PDF. */
  readonly title: T;
  readonly paper: Paper;
  readonly head: { readonly left: T; readonly right: T };
  readonly foot: { readonly left: T; readonly page: T; readonly of: T };
  readonly block: {
    readonly company: T;
    readonly companyLines: readonly T[];
    readonly documentName: T;
    readonly jobLabel: T;
    readonly cells: readonly FactView<T>[];
  };
};

export type FactView<T extends string = string> = { readonly label: T; readonly value: T };

export type TableView<T extends string = string> = {
  readonly caption: T;
  readonly columns: readonly { readonly heading: T; readonly align: 'start' | 'end' }[];
  readonly rows: readonly {
    readonly cells: readonly T[];
    readonly note: T | null;
    readonly isTotal: boolean;
  }[];
};

/**
 * Rows for a spreadsheet, as a file of their own or as one sheet of a workbook. A quantity stands there as
 * a number, to reckon with, and as text, as the pages show it; money is a `Decimal`; `null` is a cell left
 * empty.
 */
export type SpreadsheetView = {
  readonly name: string;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly SpreadsheetCell[])[];
};
export type SpreadsheetCell = string | number | Decimal | null;

/** A cell text that a table draws as an empty tick box or a line to write on. */
export const TICK_BOX = '\u0001box';
export const WRITE_LINE = '\u0001line';

export type ListView<T extends string = string> = {
  readonly heading: T;
  readonly items: readonly T[];
};

export type CheckListView<T extends string = string> = {
  readonly heading: T;
  readonly items: readonly { readonly text: T; readonly quantity: T | null; readonly isHold: boolean }[];
};

export type FindingView<T extends string = string> = {
  readonly severity: Severity;
  readonly severityWord: T;
  readonly place: T;
  readonly sentence: T;
  readonly limit: T;
  readonly source: T;
  readonly acknowledged: T | null;
};

export type FiguredDrawing<T extends string = string> = {
  readonly heading: T;
  readonly drawing: Drawing;
};

export type SignatureView<T extends string = string> = {
  readonly heading: T;
  readonly sentence: T;
  readonly lines: readonly { readonly who: T; readonly date: T }[];
};

export type ProposalView = {
  readonly frame: FrameView<PublicText>;
  readonly summary: {
    readonly offer: PublicText;
    readonly facts: readonly FactView<PublicText>[];
    readonly whatYouGet: TableView<PublicText>;
    readonly price: FactView<PublicText>;
    readonly next: ListView<PublicText>;
    readonly signing: PublicText;
  };
  readonly areas: {
    readonly heading: PublicText;
    readonly items: readonly {
      readonly heading: PublicText;
      readonly plan: FiguredDrawing<PublicText> | null;
      readonly facts: readonly FactView<PublicText>[];
      readonly points: readonly PublicText[];
    }[];
  };
  /** Public walks that are not where they should be: what can be done, and what is signed for apart. */
  readonly publicWalks: readonly {
    readonly facts: ListView<PublicText>;
    readonly ways: TableView<PublicText>;
    readonly edge: SignatureView<PublicText> | null;
  }[];
  readonly removal: ListView<PublicText> | null;
  readonly stays: ListView<PublicText> | null;
  readonly prices: TableView<PublicText>;
  readonly payments: TableView<PublicText>;
  readonly hidden: {
    readonly heading: PublicText;
    readonly intro: PublicText;
    readonly table: TableView<PublicText>;
  } | null;
  readonly notIncluded: ListView<PublicText> | null;
  readonly calendar: TableView<PublicText>;
  readonly access: ListView<PublicText>;
  readonly beforeWeCome: ListView<PublicText>;
  readonly aboutConcrete: ListView<PublicText>;
  readonly care: ListView<PublicText>;
  readonly terms: {
    readonly heading: PublicText;
    readonly clauses: readonly { readonly question: PublicText; readonly answer: PublicText }[];
  };
  readonly standards: PublicText;
  readonly signatures: SignatureView<PublicText>;
};

export type WorkOrderView = {
  readonly frame: FrameView;
  readonly plan: FiguredDrawing;
  readonly goesPlan: FiguredDrawing | null;
  readonly facts: readonly FactView[];
  readonly photos: ListView | null;
  readonly protect: ListView | null;
  readonly slabs: TableView;
  readonly curves: TableView | null;
  readonly turns: TableView | null;
  readonly checks: TableView | null;
  /** Heights of points against the datum, and how level notes close. */
  readonly levels: { readonly table: TableView; readonly notes: readonly string[] } | null;
  /** New surfaces: where water runs, how high to form, how deep to dig; null where no heights tell. */
  readonly grades: {
    readonly plan: FiguredDrawing;
    readonly tops: TableView | null;
    readonly strings: TableView | null;
    readonly digs: TableView | null;
    readonly notes: readonly string[];
  } | null;
  /** Along chosen lines: what is there now against what will be. */
  readonly profiles: readonly { readonly drawing: FiguredDrawing; readonly table: TableView }[];
  /** The lowest step of each flight that stays, and what each tread would take to make all steps equal. */
  readonly flights: TableView | null;
  readonly flightSplits: TableView | null;
  /** Heights to form steps at. */
  readonly stepTops: TableView | null;
  /** What lies in and under new slabs. */
  readonly fixtures: {
    readonly plan: FiguredDrawing;
    readonly lids: TableView | null;
    readonly pipes: TableView | null;
  } | null;
  readonly drains: TableView | null;
  /** Where new slabs come up to garage floors, and lines that their water may not run to. */
  readonly garages: TableView | null;
  readonly keptDry: TableView | null;
  /** Where new slabs meet public walks. */
  readonly publicWalks: TableView | null;
  /** Parts of walls beside new surfaces. */
  readonly walls: TableView | null;
  readonly forms: TableView;
  readonly formPieces: TableView | null;
  readonly joints: TableView | null;
  readonly panels: TableView;
  /** Null where all of it is one pour. */
  readonly pours: TableView | null;
  /** What is done along every edge of every slab. */
  readonly edges: TableView | null;
  readonly steel: TableView | null;
  /** Where every bar lies, the lengths to cut, and out of which stock. */
  readonly bars: {
    readonly plan: FiguredDrawing;
    readonly notes: readonly string[];
    readonly cutList: TableView;
    readonly cutPlan: TableView;
  } | null;
  /** Everything that goes, and what it is hauled as. */
  readonly goes: TableView | null;
  /** Bays to chalk before breaking; null within where nothing is split between loads. */
  readonly bays: {
    readonly notes: ListView;
    readonly chalked: { readonly plan: FiguredDrawing; readonly lines: TableView } | null;
  } | null;
  readonly loads: TableView | null;
  /** How small to break, for the places that take it. */
  readonly pieceNotes: readonly string[];
  /** What one load carries of a slab that is not as thick as planned. */
  readonly reChalk: TableView | null;
  readonly findings: { readonly heading: string; readonly items: readonly FindingView[] } | null;
  readonly days: readonly {
    readonly date: string;
    readonly weekday: string;
    readonly phase: string;
    readonly facts: readonly FactView[];
    readonly before: CheckListView;
    readonly work: CheckListView;
    readonly after: CheckListView;
    readonly wroteDown: { readonly heading: string; readonly labels: readonly string[] };
  }[];
  /** Null where nothing is placed. */
  readonly pourDay: {
    readonly heading: string;
    readonly facts: readonly FactView[];
    readonly goNoGo: TableView;
    readonly clock: TableView;
    readonly clockNotes: readonly string[];
    readonly drying: { readonly table: TableView; readonly legend: string } | null;
    readonly measures: readonly ListView[];
    readonly rain: ListView;
    readonly notes: readonly string[];
  } | null;
  readonly prePour: CheckListView;
  readonly prePourSign: SignatureView;
  /** A page for the chute: what to check, what to refuse, a line a truck, the sum for the last one. */
  readonly chute: {
    readonly heading: string;
    readonly facts: readonly FactView[];
    readonly checks: CheckListView;
    readonly refuse: ListView;
    readonly water: ListView;
    readonly trucks: TableView;
    readonly balance: { readonly table: TableView; readonly notes: readonly string[] } | null;
  } | null;
  readonly surprise: ListView;
};

export type MaterialsView = {
  readonly frame: FrameView;
  readonly loads: TableView | null;
  readonly loadNotes: readonly string[];
  /** When each trip is driven. */
  readonly trips: TableView | null;
  /** What other plans of trips would cost. */
  readonly why: TableView | null;
  /** Where the loads go, and what is asked there. */
  readonly places: TableView | null;
  readonly streams: TableView | null;
  readonly fleet: TableView | null;
  readonly fleetNotes: readonly string[];
  readonly tieDowns: { readonly table: TableView; readonly note: string } | null;
  readonly base: { readonly heading: string; readonly facts: readonly FactView[] } | null;
  readonly concrete: {
    readonly heading: string;
    /** Net and allowances, part by part, to what is needed. */
    readonly volume: TableView;
    readonly facts: readonly FactView[];
    /** What the plant bills; null where bags are mixed. */
    readonly cost: TableView | null;
    /** How it gets from the truck to each slab; null where nobody said enough of it. */
    readonly placing: TableView | null;
    /** A page for the call to the plant; null where bags are mixed. */
    readonly script: {
      readonly heading: string;
      readonly intro: string;
      readonly say: TableView;
      readonly trucks: TableView;
      readonly ask: TableView;
      /** Labels of lines to write on when the order is taken. */
      readonly taken: readonly string[];
    } | null;
  };
  readonly steel: TableView | null;
  /** Bars to buy, of all slabs together. */
  readonly stock: TableView | null;
  readonly forms: TableView;
  readonly shopping: {
    readonly heading: string;
    readonly suppliers: readonly {
      readonly name: string;
      readonly phone: string;
      readonly orderBy: string;
      readonly table: TableView;
    }[];
  };
};

export type HazardView = {
  readonly number: string;
  readonly name: string;
  readonly when: string;
  readonly measures: readonly string[];
  readonly wear: string;
};

export type SafetyView = {
  readonly frame: FrameView;
  readonly worst: { readonly heading: string; readonly hazards: readonly HazardView[] };
  readonly emergency: { readonly heading: string; readonly facts: readonly FactView[] };
  readonly silica: { readonly table: TableView; readonly notes: readonly string[] } | null;
  readonly rest: { readonly heading: string; readonly hazards: readonly HazardView[] } | null;
  readonly welfare: ListView;
  readonly cautions: ListView;
};

/** A figure of the calculation sheet, with where its inputs come from and the number of its source. */
export type FigureRowView = {
  readonly name: string;
  readonly value: string;
  readonly formula: string;
  readonly origins: string | null;
  readonly source: string;
};

/** Figures of one thing; without a heading, a single figure by its whole id. */
export type FigureGroupView = {
  readonly heading: string | null;
  readonly figures: readonly FigureRowView[];
};

export type CalculationView = {
  readonly frame: FrameView;
  readonly warning: string;
  readonly reading: string;
  readonly findings: { readonly heading: string; readonly items: readonly FindingView[] } | null;
  readonly margin: { readonly heading: string; readonly facts: readonly FactView[] };
  readonly headings: {
    readonly figure: string;
    readonly value: string;
    readonly formula: string;
    readonly source: string;
  };
  readonly topics: readonly {
    readonly id: string;
    readonly heading: string;
    readonly groups: readonly FigureGroupView[];
  }[];
  readonly sources: { readonly heading: string; readonly items: readonly string[] };
};

export type BinderView = {
  readonly frame: FrameView;
  readonly contents: {
    readonly heading: string;
    readonly entries: readonly { readonly part: DocumentKind; readonly title: string }[];
  };
  readonly proposal: ProposalView;
  readonly workOrder: WorkOrderView;
  readonly materials: MaterialsView;
  readonly safety: SafetyView;
  readonly calculation: CalculationView;
};

export type SiteWalkView = {
  readonly frame: FrameView;
  readonly intro: string;
  readonly sections: readonly {
    readonly heading: string;
    readonly hint: string | null;
    readonly lines: readonly string[];
    /** Rows left empty to write in, under these headings. */
    readonly table: { readonly columns: readonly string[]; readonly emptyRows: number } | null;
    /** A ruled field to sketch in. */
    readonly sketch: boolean;
  }[];
};

export type JobsPageView = {
  readonly language: string;
  readonly title: string;
  readonly intro: string;
  readonly headings: {
    readonly job: string;
    readonly stage: string;
    readonly place: string;
    readonly next: string;
    readonly findings: string;
    readonly documents: string;
  };
  readonly overdue: string;
  readonly jobs: readonly {
    readonly id: string;
    readonly number: string;
    readonly label: string;
    readonly stage: string;
    readonly place: string;
    readonly next: { readonly text: string; readonly date: string; readonly shown: string } | null;
    readonly findings: string;
    readonly documents: readonly {
      readonly text: string;
      readonly html: string;
      readonly pdf: string | null;
    }[];
  }[];
};
