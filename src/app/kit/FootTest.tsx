// Measuring a foot by sewing: a straight edge on its four sides, four gaps, the true diameter and the place of the needle.

import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { type FootMeasured, type FourGaps, measureFoot } from '../../model/kit/foot-test.ts';
import type { Foot } from '../../model/plan.ts';
import { setMeasured } from '../../session/kit/feet.ts';
import { Aside, Sentence } from '../slip/Slip.tsx';
import { useTheSession } from '../use-session.ts';
import { LengthField } from '../words/LengthField.tsx';
import { type WriteLength, useFineLengths } from '../words/lengths.ts';
import { FootPicture } from './FootPicture.tsx';
import { sayOffset } from './say-reach.ts';

interface Step {
  readonly side: keyof FourGaps;
  readonly name: string;
  readonly say: string;
}

const STEPS: readonly Step[] = [
  { side: 'left', name: 'Template at the left', say: 'Hold the straight edge at the left of the foot. Sew 3 in, away from you or towards you.' },
  { side: 'right', name: 'Template at the right', say: 'Hold it at the right of the foot. Sew 3 in.' },
  { side: 'behind', name: 'Template behind', say: 'Hold it behind the foot, away from you. Sew 3 in, sideways.' },
  { side: 'front', name: 'Template in front', say: 'Hold it between the foot and you. Sew 3 in, sideways.' },
];

export function FootTest({ id, foot, onDone }: { readonly id: string; readonly foot: Foot; readonly onDone: () => void }) {
  const session = useTheSession();
  const fine = useFineLengths();
  const [gaps, setGaps] = useState<Partial<FourGaps>>({});
  const found = isWhole(gaps) ? measureFoot(gaps) : undefined;
  const left = STEPS.filter(({ side }) => gaps[side] === undefined).length;
  return (
    <section className="board foot-test" aria-label={`Measure ${foot.name}`}>
      <div className="board-head">
        <div>
          <h1>Measure {foot.name}</h1>
          <p className="aside">On a layered scrap, hold a straight template, draw along its edge, sew along it, and measure from the drawn line to the stitches. Do so on each side of the foot.</p>
        </div>
        <Button className="button" onPress={onDone}>Leave it</Button>
      </div>
      <ol className="foot-steps">
        {STEPS.map(({ side, name, say }, i) => (
          <li key={side} className="foot-step">
            <StepPicture side={side} />
            <h2>{i + 1}. {name}</h2>
            <p>{say}</p>
            <LengthField
              label="Gap from edge to stitches"
              value={gaps[side]}
              least={0}
              problem={found?.kind === 'no-gap' && found.side === side ? 'No foot leaves such a gap.' : undefined}
              onValue={(gap) => setGaps({ ...gaps, [side]: gap })}
              onEmpty={() => setGaps({ ...gaps, [side]: undefined })}
            />
          </li>
        ))}
      </ol>
      <div className="foot-found" role="status">
        {found ? <Found found={found} fine={fine} /> : <Sentence>{left === STEPS.length ? 'Four gaps tell how wide the foot is and where its needle falls.' : `${left === 1 ? 'One gap' : `${left} gaps`} to go.`}</Sentence>}
      </div>
      <div className="foot-test-foot">
        {found?.kind === 'measured' && <FootPicture foot={found} scale={Math.min(90, 60 / found.diameter)} />}
        <Button
          className="button main"
          isDisabled={found?.kind !== 'measured'}
          onPress={() => {
            if (found?.kind !== 'measured') return;
            setMeasured(session, id, found.diameter, found.needleOffset);
            onDone();
          }}
        >
          Take these measures
        </Button>
      </div>
      <Aside>Stop the machine, needle down, before you move the template. Your machine’s manual comes first.</Aside>
    </section>
  );
}

function isWhole(gaps: Partial<FourGaps>): gaps is FourGaps {
  return STEPS.every(({ side }) => gaps[side] !== undefined);
}

function Found({ found, fine }: { readonly found: FootMeasured; readonly fine: WriteLength }) {
  switch (found.kind) {
    case 'measured':
      return (
        <>
          <Sentence>{`The foot is ${fine(found.diameter)} across, so the needle line runs ${fine(found.diameter / 2)} from the edge.`}</Sentence>
          <Sentence>{sayOffset(found.needleOffset, fine) ?? 'The needle falls in its middle.'}</Sentence>
          {found.apart > 0 && <Aside>{`The two pairs of gaps agree to ${fine(found.apart)}.`}</Aside>}
        </>
      );
    case 'slipped':
      return (
        <>
          <Sentence>The template slipped. Measure again.</Sentence>
          <Aside>{`Left and right add up to ${fine(found.sideways)}, behind and in front to ${fine(found.lengthways)}. Both are the width of the foot, so they must be the same to 1/32 in.`}</Aside>
        </>
      );
    case 'no-gap':
      return <Sentence>One of the gaps is none that a foot leaves. Measure it again.</Sentence>;
  }
}

/** The foot with the template at one of its sides, the stitches behind it, and the gap that is measured. */
function StepPicture({ side }: { readonly side: keyof FourGaps }) {
  const turn = { left: 0, behind: 90, right: 180, front: 270 }[side];
  return (
    <svg className="step-picture" viewBox="-60 -60 120 120" role="img" aria-label={PICTURED[side]}>
      <g transform={`rotate(${turn})`}>
        <path className="acrylic" d="M -56 -54 H -24 V 54 H -56 Z" />
        <path className="edge" d="M -24 -54 V 54" />
        <path className="sewn" d="M 0 54 V 0" />
        <path className="gap" d="M -22 36 H -3 M -17 32 L -22 36 L -17 40 M -8 32 L -3 36 L -8 40" />
        <circle className="ring-line" r="24" />
        <circle className="needle-point" r="3" />
      </g>
    </svg>
  );
}

const PICTURED: { readonly [side in keyof FourGaps]: string } = {
  left: 'The template at the left of the foot; the gap is measured from its edge to the stitches.',
  right: 'The template at the right of the foot; the gap is measured from its edge to the stitches.',
  behind: 'The template behind the foot, at the top of the picture; the gap is measured from its edge to the stitches.',
  front: 'The template between the foot and you, at the bottom of the picture; the gap is measured from its edge to the stitches.',
};
