// What the foot on the machine can reach of a template: the needle line, its curves, and the edge that is missed.

import { pointAlong } from '../../geometry/measure.ts';
import { moved } from '../../geometry/point.ts';
import type { TemplateShape } from '../../model/kit/shape.ts';
import type { Foot } from '../../model/plan.ts';
import { needleLines } from '../../needle/needle-lines.ts';
import { type Reach, reachOf } from '../../session/kit/reach.ts';
import { Aside, Sentence, SlipPart } from '../slip/Slip.tsx';
import { useFineLengths } from '../words/lengths.ts';
import { FindingSign, FootSign } from '../words/signs.tsx';
import { TemplatePicture, pictureBox } from './TemplatePicture.tsx';
import { sayReach } from './say-reach.ts';

/** How far along the needle line the ring stands: away from where lines begin, which is often at a corner. */
const RING_AT = 0.13;

export function ReachPart({ shape, foot }: { readonly shape: TemplateShape; readonly foot: Foot }) {
  const fine = useFineLengths();
  const { line, lineAsides, missed, missedAsides } = sayReach(reachOf(shape, foot.diameter), foot, fine);
  return (
    <SlipPart title="What the foot can reach">
      <div className="told">
        <FootSign />
        <div>
          <Sentence>{line}</Sentence>
          {lineAsides.map((aside) => <Aside key={aside}>{aside}</Aside>)}
        </div>
      </div>
      {missed === undefined ? (
        <Aside>The foot reaches every edge of it.</Aside>
      ) : (
        <div className="told">
          <FindingSign severity="warning" />
          <div>
            <Sentence>{missed}</Sentence>
            {missedAsides.map((aside) => <Aside key={aside}>{aside}</Aside>)}
          </div>
        </div>
      )}
      <Aside>{`With ${foot.name}, the foot on the machine.`}</Aside>
    </SlipPart>
  );
}

/** The template as large as the slip allows, with the foot against its edge and the missed places numbered. */
export function LargePicture({ shape, foot, quiet }: { readonly shape: TemplateShape; readonly foot: Foot | undefined; readonly quiet: boolean }) {
  const box = pictureBox(shape, foot);
  const reach = foot && reachOf(shape, foot.diameter);
  const size = Math.max(box.maxX - box.minX, box.maxY - box.minY);
  return (
    <figure className={quiet ? 'large-picture quiet' : 'large-picture'}>
      <TemplatePicture shape={shape} foot={foot} box={box}>
        {foot && <FootAtEdge shape={shape} foot={foot} />}
        {reach && <MissedNumbers reach={reach} size={size} />}
      </TemplatePicture>
      {quiet && <figcaption>As it was before.</figcaption>}
    </figure>
  );
}

/** The foot as a ring against the edge, its needle on the line. */
function FootAtEdge({ shape, foot }: { readonly shape: TemplateShape; readonly foot: Foot }) {
  const line = needleLines(shape, foot.diameter).lines[0];
  if (!line) return null;
  const { point } = pointAlong(line.path, line.length * RING_AT);
  const [x, y] = foot.needleOffset;
  return (
    <>
      <circle className="foot-ring" cx={point.x} cy={point.y} r={foot.diameter / 2} />
      <circle className="foot-needle" cx={point.x + x} cy={point.y + y} r={foot.diameter / 9} />
    </>
  );
}

function MissedNumbers({ reach, size }: { readonly reach: Reach; readonly size: number }) {
  if (reach.missed.length > 8) return null;
  const letter = size / 24;
  return (
    <>
      {reach.missed.map(({ number, at, into }) => {
        // Beside the place, on the acrylic, so that the missed edge itself stays in sight.
        const { x, y } = moved(at, into, letter * 1.2);
        return (
          <g key={number} className="missed-number">
            <circle cx={x} cy={y} r={letter * 0.75} />
            <text x={x} y={y + letter * 0.36} fontSize={letter}>{number}</text>
          </g>
        );
      })}
    </>
  );
}
