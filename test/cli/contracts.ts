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
