// What is asked of a border, in sentences whose dotted words can be changed, over a small picture with every measured side.

import type { Frieze } from '../../../model/plan.ts';
import type { AskedBorder } from '../../../session/setout/asked.ts';
import { ask } from '../../../session/setout/setting-out.ts';
import { FRIEZES, FRIEZE_ORDER } from '../../../session/sheet/repeats.ts';
import { SlipPart } from '../../slip/Slip.tsx';
import { useSession, useTheSession } from '../../use-session.ts';
import { Said } from '../../words/Said.tsx';
import { WordChoice } from '../slip/WordChoice.tsx';
import { LengthWord } from './LengthWord.tsx';
import { SidesPicture } from './SidesPicture.tsx';
import { TemplateWord } from './TemplateWord.tsx';

const ANY = '';
/** Shorter repeats than this are no ruler work. */
const SHORTEST = 0.5;

export function BorderWords({ asked }: { readonly asked: AskedBorder }) {
  const session = useTheSession();
  const areas = useSession((state) => state.evaluation.top.areas);
  const sides = areas.filter((area) => area.kind === 'border-side' && area.border === asked.border);
  const borders = [...new Set(areas.flatMap(({ kind, border }) => (kind === 'border-side' && border !== undefined ? [border] : [])))];
  const longest = Math.max(...sides.map(({ width }) => width));
  const set = (change: Partial<{ [key in keyof AskedBorder]: AskedBorder[key] | undefined }>) => ask(session, withoutNothing({ ...asked, ...change }));
  return (
    <>
      <SidesPicture sides={sides} />
      <SlipPart title="What must come out even">
        {borders.length > 1 && (
          <p className="sentence spoken">
            <WordChoice label="Border" text={`Border ${asked.border}`} options={() => borders.map((border) => ({ id: String(border), name: `Border ${border}, counted from the inside` }))} chosen={String(asked.border)} onChoose={(border) => set({ border: Number(border) })} />, on all four sides.
          </p>
        )}
        <p className="sentence spoken">Sew it with <TemplateWord template={asked.template} onTemplate={(template) => set({ template })} />.</p>
        <p className="sentence spoken">
          Repeat it as{' '}
          <WordChoice
            label="Arrangement"
            text={asked.pattern === undefined ? 'whatever suits it' : FRIEZES[asked.pattern].name.toLowerCase()}
            options={() => [{ id: ANY, name: 'Whatever suits it' }, ...FRIEZE_ORDER.map((id) => ({ id, name: `${FRIEZES[id].name}: ${FRIEZES[id].how}` }))]}
            chosen={asked.pattern ?? ANY}
            onChoose={(id) => set({ pattern: id === ANY ? undefined : (id as Frieze) })}
          />
          .
        </p>
        <p className="sentence spoken">One repeat may be <LengthWord label="About how long one repeat is" free="any length" before="about" value={asked.spacing} least={SHORTEST} most={longest} onValue={(spacing) => set({ spacing })} />.</p>
        <p className="sentence spoken">Its crest stands <LengthWord label="How high the crest stands" free="as high as there is room" value={asked.crest} least={0} most={Math.max(...sides.map(({ height }) => height))} onValue={(crest) => set({ crest })} />.</p>
        <p className="aside"><Said>A template is rigid: it gives the crest and the joints it gives. Only its lie and the count can change.</Said></p>
      </SlipPart>
    </>
  );
}

function withoutNothing(asked: { [key in keyof AskedBorder]: AskedBorder[key] | undefined }): AskedBorder {
  return Object.fromEntries(Object.entries(asked).filter(([, value]) => value !== undefined)) as unknown as AskedBorder;
}
