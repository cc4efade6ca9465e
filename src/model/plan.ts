// The plan document: what a person decided, and nothing that can be computed from it.
// This is the file as it lies on disk: lengths in inches, angles in degrees (people read it), outlines as SVG path
// data (M L H V C Q A Z), collections as maps keyed by id. Fields this version does not know are kept as they came.

export const PLAN_FORMAT = 'needlefall-plan';
export const PLAN_VERSION = 1;

/** Things of one kind keyed by id: small patches, merges without quarrels. */
export type ById<Item> = { readonly [id: string]: Item };

/** A place as people write it: [x, y] in inches, x to the right, y down. */
export type Place = readonly [x: number, y: number];

/** SVG path data in inches. */
export type PathData = string;

export interface Plan {
  readonly format: typeof PLAN_FORMAT;
  readonly version: typeof PLAN_VERSION;
  readonly name: string;
  readonly notes?: string;
  /** The unit people see; the file itself is always inches. */
  readonly shownIn: 'in' | 'cm';
  readonly kit: Kit;
  readonly materials: Materials;
  readonly machine: Machine;
  readonly top: Top;
  readonly sheets: ById<Sheet>;
  /** The order in which sheets lie on each other; sheets not named come last, in the order of the map. */
  readonly sheetOrder?: readonly string[];
  /** Findings the quilter has seen and leaves so, by the finding's key, with her reason. */
  readonly accepted?: ById<Accepted>;
}

// ---- the kit ----

export interface Kit {
  readonly feet: ById<Foot>;
  readonly templates: ById<Template>;
  /** The foot new placements are laid for; the first of the kit when left out. */
  readonly onTheMachine?: string;
}

export type Shank = 'low' | 'medium' | 'high';

export interface Foot {
  readonly name: string;
  /** Across the round foot, in inches. */
  readonly diameter: number;
  /** Where the needle falls, from the foot's centre: x to the sewer's right, y towards the sewer. */
  readonly needleOffset: Place;
  readonly shank: Shank;
}

export type Grips = 'none' | 'one-face' | 'both-faces';

interface AnyTemplate {
  readonly name: string;
  /** Of the acrylic, in inches. */
  readonly thickness: number;
  /** Which faces carry grips; with `one-face` they are under the template while its etched face is up. */
  readonly grips: Grips;
  /** Etchings the quilter added or, with a family's own id, changed. */
  readonly etchings?: ById<Etching>;
  /** Etchings of the family, by id, that are not on the quilter's own template. */
  readonly notEtched?: readonly string[];
  readonly hidden?: boolean;
  readonly notes?: string;
}

/** A template of one of the built-in families, at the quilter's sizes. */
export interface FamilyTemplate extends AnyTemplate {
  readonly family: string;
  readonly sizes: { readonly [size: string]: number };
}

/** A template given by its own outline. */
export interface OutlineTemplate extends AnyTemplate {
  readonly outline: PathData;
  readonly windows?: ById<PathData>;
}

export type Template = FamilyTemplate | OutlineTemplate;

export type Etching =
  | { readonly kind: 'line'; readonly from: Place; readonly to: Place; readonly name?: string }
  | { readonly kind: 'point'; readonly at: Place; readonly name?: string }
  | { readonly kind: 'cross'; readonly at: Place; readonly angle: number; readonly name?: string }
  | { readonly kind: 'curve'; readonly path: PathData; readonly name?: string };

// ---- materials and machine ----

export interface Materials {
  readonly thread?: { readonly name?: string; readonly tex?: number; readonly thickness?: number };
  readonly bobbin?: { readonly name?: string; readonly yards?: number };
  readonly batting?: {
    readonly name?: string;
    /** The widest gap the label allows, in inches. */
    readonly widestGap?: number;
    /** What the label's figure means: the distance between lines, or the side of an open square. */
    readonly gapMeans?: 'line-distance' | 'open-square';
  };
}

export interface Machine {
  readonly name?: string;
  readonly kind?: 'sit-down' | 'frame';
  /** Depth of quilt a frame machine reaches before the quilt is rolled on, in inches. */
  readonly reach?: number;
  /** In inches. */
  readonly stitchLength?: number;
  readonly stitchesPerMinute?: number;
}

// ---- the top ----

export interface Top {
  /** Pieced blocks; leave out for a wholecloth or panel. */
  readonly blocks?: Blocks;
  /** One piece of cloth in the middle instead of blocks: width and height. */
  readonly panel?: { readonly size: Place };
  /** From the inside out. */
  readonly borders: readonly Border[];
  readonly drawnAreas: ById<DrawnArea>;
  readonly keepOuts: ById<KeepOut>;
  readonly clearance: Clearance;
}

export interface Blocks {
  /** On point, `rows` by `columns` counts the blocks that touch the outer rows and columns; (rows - 1) x (columns - 1) more lie between them. */
  readonly setting: 'straight' | 'on-point';
  readonly rows: number;
  readonly columns: number;
  /** Finished width and height of one block. */
  readonly size: Place;
  /** Finished width of the strips between blocks; 0 for none. */
  readonly sashing: number;
  /** Small squares where strips cross; without them the strips between rows run through. */
  readonly cornerstones: boolean;
  /** Strips also run round the outside of the blocks. */
  readonly sashedRound?: boolean;
}

export type Side = 'top' | 'right' | 'bottom' | 'left';

export interface Border {
  /** Finished; of the outermost border, from its inner seam to the raw edge. */
  readonly width: number;
  readonly corners: 'butted' | 'mitred' | 'squares';
  /** With butted corners, the sides sewn on last, which run through to the raw edge. */
  readonly through?: 'top-and-bottom' | 'left-and-right';
  /** What the tape says along the inner seam, from corner to corner; used for all that is computed for that side. */
  readonly measured?: { readonly [side in Side]?: number };
}

/** An area of the user's own, in quilt coordinates. */
export interface DrawnArea {
  readonly name: string;
  readonly outline: PathData;
  /** How far its own axes are turned clockwise, in degrees. */
  readonly angle?: number;
}

/** A shape no stitching may enter, such as an applique, in quilt coordinates. */
export interface KeepOut {
  readonly name: string;
  readonly outline: PathData;
  /** How far to stay away from it, in inches; none when left out. */
  readonly clearance?: number;
}

export interface Clearance {
  /** How far stitching stays from the raw outer edge (seam allowance and binding), in inches. */
  readonly rawEdge: number;
  /** How far stitching stays from a seam, in inches. */
  readonly seam: number;
}

// ---- tracing sheets ----

export type AreaKind =
  | 'block'
  | 'sashing'
  | 'cornerstone'
  | 'setting-triangle'
  | 'corner-triangle'
  | 'panel'
  | 'border-side'
  | 'border-corner'
  | 'drawn'
  | 'top';

/** The areas a sheet is for: all of a kind, less or limited to some. */
export interface SheetFor {
  readonly kind: AreaKind;
  /** Which border, 1 for the innermost; only for border sides and corners. All borders when left out. */
  readonly border?: number;
  readonly only?: readonly string[];
  readonly except?: readonly string[];
}

export interface Sheet {
  readonly name: string;
  readonly for: SheetFor;
  /** Only chosen sheets are sewn. */
  readonly chosen: boolean;
  readonly placements: ById<Placement>;
  /** How every placement's passes are multiplied, step after step. */
  readonly repeat: readonly RepeatStep[];
  readonly fills: ById<Fill>;
  readonly notes?: string;
}

export interface Placement {
  readonly template: string;
  readonly foot: string;
  /** Face down. */
  readonly flipped: boolean;
  /** Where the template lies in the area's own axes (origin at the area's centre, or at the centre of one division when the sheet repeats along); angle in degrees. With registrations, the last pose they gave. */
  readonly pose: { readonly x: number; readonly y: number; readonly angle: number };
  readonly registrations: readonly Registration[];
  readonly passes: ById<Pass>;
  /** Takes the place of the sheet's repeat for this placement. */
  readonly repeat?: readonly RepeatStep[];
  readonly name?: string;
}

/** "Put this etching (or tip, or needle line) on that reference line (or point)." */
export interface Registration {
  /** `etching:ID`, `tip:N`, `point:X,Y` (template coordinates), `needle-line` or `needle-line:window:ID`. */
  readonly put: string;
  /** `line:ID`, `crossing:ID,ID`, `centre`, `point:X,Y` (the area's own axes), `stitched:PLACEMENT/PASS`, or `end:PLACEMENT/PASS/start|stop`; lines of another sheet with `SHEET/` before. */
  readonly on: string;
  /** Not on it but this far from it, in inches: to the right of a line as it runs; from a point, whichever way. */
  readonly distance?: number;
  /** How far an etched line or cross is turned clockwise from the reference line, in degrees; without a distance, only this is asked. */
  readonly angle?: number;
}

/** A stretch of the needle line that is sewn without moving the template. */
export interface Pass {
  /** The edge the foot runs along: `outline` (when left out) or `window:ID`. */
  readonly edge?: string;
  /** Which loop, where one edge gives several needle lines; 0 is the longest. */
  readonly loop?: number;
  readonly start: PassEnd;
  readonly stop: PassEnd | 'all-round';
  /** As seen looking at the etched face of the template, so that a flip keeps the stretch that is sewn. */
  readonly way: 'clockwise' | 'counterclockwise';
  readonly name?: string;
}

export type PassEnd =
  /** Where the needle line crosses a reference line (`line:ID`): the nth crossing counted along that line from its start, 1 when left out. A straight reference line counts as going on beyond its ends. */
  | { readonly crosses: string; readonly nth?: number }
  /** Inches along the needle line, clockwise as seen on the etched face, from where the foot touches the start of the edge. */
  | { readonly along: number };

/** The seven ways a motif can repeat along a strip, in the order of the frieze groups p1, p11g, p1m1, p2, p2mg, p11m, p2mm. */
export type Frieze = 'run' | 'step' | 'scallop' | 'spin' | 'wave' | 'twin' | 'lantern';

export type RepeatStep =
  /** Across a reference line, `line:ID`. */
  | { readonly mirror: string }
  /** n times round the area's centre. */
  | { readonly turn: number }
  /** n times round the area's centre, each with its mirror image across a reference line through the centre (the vertical centre line when left out). */
  | { readonly mirrorAndTurn: number; readonly across?: string }
  /** Along the length of the area, with a count for all sides or one for each. */
  | { readonly along: Frieze; readonly count: number | { readonly [side in Side]?: number } };

/** Hand-guided quilting in the space that holds a place. */
export interface Fill {
  readonly kind: string;
  /** A place in the area's own axes that lies in the space. */
  readonly at: Place;
  readonly options: { readonly [option: string]: number | string | boolean };
  readonly seed: number;
}

export interface Accepted {
  readonly reason: string;
}
