// The documented JSON of the command line: exactly these fields, and nothing else.

import { z } from 'zod';

const inches = z.number().nonnegative();
const pathData = z.string().regex(/^M -?[\d.]/);
const edgeName = z.string().regex(/^(outline|window:.+)$/);

export const needleContract = z.strictObject({
  needleLines: z.array(
    z.strictObject({
      from: edgeName,
      d: pathData,
      length: inches,
      area: inches,
      pieces: z.array(z.strictObject({ kind: z.enum(['edge', 'corner']), edge: z.number().int().nonnegative(), start: inches, end: inches, length: inches })),
    }),
  ),
  missed: z.array(z.strictObject({ from: edgeName, start: inches, end: inches, length: inches })),
});

export const areaContract = z.strictObject({
  id: z.string().min(1),
  kind: z.enum(['block', 'sashing', 'cornerstone', 'setting-triangle', 'corner-triangle', 'panel', 'border-side', 'border-corner', 'drawn', 'top']),
  width: inches,
  height: inches,
  boundary: pathData,
  referenceLines: z.array(z.strictObject({ id: z.string().min(1), d: pathData })),
});

export const areasContract = z.strictObject({ areas: z.array(areaContract) });

export const lineContract = z.strictObject({
  id: z.string().min(1),
  area: z.string().min(1),
  sheet: z.string().min(1),
  placement: z.string().min(1),
  pass: z.string().min(1),
  d: pathData,
  length: inches,
});

export const linesContract = z.strictObject({ lines: z.array(lineContract), totalLength: inches });

const pose = z.strictObject({ x: z.number(), y: z.number(), angle: z.number(), flipped: z.boolean() });

export const placeContract = z.strictObject({
  placements: z.array(
    z.strictObject({
      sheet: z.string().min(1),
      placement: z.string().min(1),
      areas: z.array(z.string().min(1)).min(1),
      pose,
      state: z.enum(['free', 'fixed', 'overfixed', 'impossible']),
      registrations: z.array(z.strictObject({ put: z.string().min(1), on: z.string().min(1), says: z.string().min(1) })),
      free: z.string().min(1).nullable(),
      otherPoses: z.array(pose),
      contradicts: z.strictObject({ registrations: z.array(z.number().int().nonnegative()).min(1), gap: inches.nullable(), says: z.string().min(1) }).nullable(),
    }),
  ),
});

export const checkContract = z.strictObject({
  findings: z.array(
    z.strictObject({
      code: z.string().regex(/^[a-z-]+$/),
      severity: z.enum(['error', 'warning', 'note']),
      message: z.string().min(1),
      where: z.strictObject({
        area: z.string().optional(),
        sheet: z.string().optional(),
        placement: z.string().optional(),
        pass: z.string().optional(),
        lines: z.array(z.string()).optional(),
        at: z.tuple([z.number(), z.number()]).optional(),
        field: z.string().optional(),
        other: z.strictObject({ sheet: z.string(), placement: z.string().optional(), pass: z.string().optional() }).optional(),
      }),
      measured: z.number().nullable(),
      limit: z.number().nullable(),
      accepted: z.string().optional(),
    }),
  ),
});

export const exportContract = z.strictObject({
  name: z.string(),
  width: inches,
  height: inches,
  areas: z.array(areaContract),
  lines: z.array(lineContract),
  totalLength: inches,
});

const at = z.tuple([z.number(), z.number()]);
const drawnMark = [
  z.strictObject({ kind: z.literal('line'), from: at, to: at, d: z.array(pathData).min(1) }),
  z.strictObject({ kind: z.enum(['tick', 'dot']), at }),
] as const;
const lettered = { letter: z.string().regex(/^[A-Z]+$/) };

export const marksContract = z.strictObject({
  slack: z.strictObject({ mark: z.literal(1 / 32), foot: z.literal(1 / 64) }),
  templates: z.array(
    z.strictObject({
      template: z.string().min(1),
      fewest: z.boolean(),
      marks: z.array(z.union([drawnMark[0].extend(lettered), drawnMark[1].extend(lettered)])),
      placements: z.array(
        z.strictObject({
          sheet: z.string().min(1),
          placement: z.string().min(1),
          areas: z.array(z.string().min(1)).min(1),
          foot: z.string().min(1),
          pose: z.strictObject({ x: z.number(), y: z.number(), angle: z.number(), flipped: z.boolean() }),
          held: z.boolean(),
          by: z.array(z.strictObject({ put: z.string().regex(/^(mark:[A-Z]+|etching:.+|tip:\d+|needle-line.*)$/), on: z.string().regex(/^(line:.+|crossing:.+|centre|point:.+)$/) })),
          say: z.array(z.strictObject({ images: z.array(z.number().int().nonnegative()).min(1), faceDown: z.boolean(), say: z.string().regex(/^Face (up|down): .+\.$/) })),
          wander: z.strictObject({ worst: inches, bands: z.array(z.array(z.strictObject({ at, away: at, along: z.number(), wide: inches })).min(2)) }).nullable(),
          byRegistrations: inches.nullable(),
          ends: z.array(z.strictObject({ pass: z.string().min(1), end: z.enum(['start', 'stop']), at, gap: inches, stillMeets: z.boolean() })),
          steadier: z.strictObject({ mark: z.union(drawnMark), say: z.string().min(1), worst: inches }).nullable(),
        }),
      ),
    }),
  ),
  tops: z.array(
    z.strictObject({
      areas: z.array(z.string().min(1)).min(1),
      fewest: z.boolean(),
      lines: z.array(z.string().min(1)),
      dots: z.array(z.strictObject({ number: z.number().int().positive(), at, under: z.enum(['mark', 'needle']), say: z.string().min(1), images: z.number().int().positive() })),
      ends: z.array(z.strictObject({ what: z.enum(['start', 'stop']), placement: z.string().min(1), at, say: z.string().min(1), images: z.number().int().positive() })),
    }),
  ),
});
