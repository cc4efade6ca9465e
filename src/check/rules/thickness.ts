// A template stands as high as the foot's shank allows: thick enough that the foot cannot ride up on it, thin enough that
// foot and needle clamp clear it. Common practice: about 1/4 in (6 mm) with high shanks and frame machines, about 1/8 in
// (3 mm) with low ones. Sheet sold as 3 mm may be 2.3 to 3.7, as 6 mm 5 to 7 (ISO 7823-1), and is let pass; for medium
// shanks practice differs, and anything from the one to the other is.

import type { Shank } from '../../model/plan.ts';
import { MM_PER_INCH, type LengthStyle, writeLength } from '../../num/inches.ts';
import { SAME_POINT } from '../../num/tolerances.ts';
import type { FindingCode } from '../codes.ts';
import type { Finding } from '../finding.ts';
import type { CheckInput } from '../input.ts';
import { finding } from '../report.ts';
import { chosenSheets } from '../../stitch/sheet-areas.ts';
import { written } from '../words.ts';

interface Room {
  readonly least: number;
  readonly most: number;
  readonly usual: string;
}

const THIN = { least: 2.3 / MM_PER_INCH, most: 3.7 / MM_PER_INCH };
const THICK = { least: 5 / MM_PER_INCH, most: 7 / MM_PER_INCH };

const ROOM: { readonly [shank in Shank]: Room } = {
  low: { ...THIN, usual: 'about 1/8 in (3 mm)' },
  medium: { least: THIN.least, most: THICK.most, usual: '1/8 in to 1/4 in (3 to 6 mm)' },
  high: { ...THICK, usual: 'about 1/4 in (6 mm)' },
};

export type ThicknessFit = 'fits' | 'too-thin' | 'too-thick';

/** Whether a template's thickness in inches goes with a shank, and what is usual with it, in words. */
export function thicknessFit(thicknessOf: number, shank: Shank): { readonly fit: ThicknessFit; readonly usual: string } {
  const { least, most, usual } = ROOM[shank];
  const fit = thicknessOf < least - SAME_POINT ? 'too-thin' : thicknessOf > most + SAME_POINT ? 'too-thick' : 'fits';
  return { fit, usual };
}

/** One finding for each template and foot used together on a chosen sheet that do not go together by thickness. */
export function thickness({ plan }: CheckInput): readonly Finding[] {
  const seen = new Set<string>();
  return chosenSheets(plan).flatMap(([sheet, { placements }]) =>
    Object.entries(placements).flatMap(([placement, { template: templateId, foot: footId }]) => {
      const key = `${templateId}\n${footId}`;
      const template = plan.kit.templates[templateId];
      const foot = plan.kit.feet[footId];
      if (!template || !foot || seen.has(key)) return [];
      seen.add(key);
      const room = ROOM[foot.shank];
      const where = { sheet, placement, field: `kit.templates.${templateId}.thickness` };
      const tell = (code: FindingCode, what: string, limit: number) => [
        finding(code, `${template.name} is ${writtenThickness(template.thickness)} thick, and ${what} With a ${foot.shank} shank ${room.usual} is usual. Your machine's manual decides.`, where, { measured: template.thickness, limit }),
      ];
      const { fit } = thicknessFit(template.thickness, foot.shank);
      if (fit === 'too-thin') return tell('template-too-thin', `${foot.name} can ride up on it.`, room.least);
      if (fit === 'too-thick') return tell('template-too-thick', `${foot.name} may not clear it.`, room.most);
      return [];
    }),
  );

  function writtenThickness(length: number): string {
    const finer: LengthStyle = { unit: 'in', smallest: 32 };
    return plan.shownIn === 'cm' ? written(plan, length) : writeLength(length, finer);
  }
}
