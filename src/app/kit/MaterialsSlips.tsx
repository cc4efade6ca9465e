// The slips of what else lies in the drawer: thread, bobbin, batting, and the machine with its stitch.

import { BATTINGS } from '../../model/kit/battings.ts';
import { stitchLengthOf, stitchesPerInch, texOfWeight, weightOfTex } from '../../model/kit/thread.ts';
import type { Machine, Materials } from '../../model/plan.ts';
import { MM_PER_INCH } from '../../num/inches.ts';
import { forgetTyped, keepTyped, type } from '../../session/typing.ts';
import { Aside, Sentence, Slip, SlipPart } from '../slip/Slip.tsx';
import { useSession, useTheSession } from '../use-session.ts';
import { Cautions } from '../words/Cautions.tsx';
import { LengthField } from '../words/LengthField.tsx';
import { NumberField } from '../words/NumberField.tsx';
import { useFineLengths, useLengths } from '../words/lengths.ts';
import { Choices, Taps } from './Choices.tsx';
import { TextField } from './TextField.tsx';
import { CM_PER_YARD } from './material-words.ts';

type Thread = NonNullable<Materials['thread']>;
type Bobbin = NonNullable<Materials['bobbin']>;
type Batting = NonNullable<Materials['batting']>;

/** What is typed about one of the materials or the machine: all of it is one step of undo, and Escape takes it back. A field of undefined is taken away. */
function useTyped() {
  const session = useTheSession();
  const materials = <Kind extends keyof Materials>(kind: Kind, label: string, change: { readonly [field in keyof NonNullable<Materials[Kind]>]?: NonNullable<Materials[Kind]>[field] | undefined }) =>
    type(session, label, (plan) => {
      plan.materials[kind] = withChange(plan.materials[kind] ?? {}, change);
    });
  const machine = (label: string, change: { readonly [field in keyof Machine]?: Machine[field] | undefined }) =>
    type(session, label, (plan) => {
      plan.machine = withChange(plan.machine, change);
    });
  const onKeep = () => keepTyped(session);
  return { materials, machine, onKeep, keeping: { onKeep, onGiveUp: () => forgetTyped(session) } };
}

function withChange<Thing extends object>(thing: Thing, change: object): Thing {
  return Object.fromEntries(Object.entries({ ...thing, ...change }).filter(([, value]) => value !== undefined && value !== '')) as Thing;
}

const WEIGHTS = [30, 40, 50, 60, 100];

export function ThreadSlip() {
  const thread: Thread = useSession((state) => state.evaluation.plan.materials.thread) ?? {};
  const { materials, onKeep, keeping } = useTyped();
  const set = (change: Parameters<typeof materials<'thread'>>[2]) => materials('thread', 'Thread', change);
  const weight = thread.tex === undefined ? undefined : weightOfTex(thread.tex);
  return (
    <Slip title="Thread" about="What the quilt is sewn with">
      <SlipPart title="How heavy it is">
        <Taps
          label="Usual weights"
          taps={WEIGHTS.map((value) => ({
            name: `${value}`,
            taken: weight !== undefined && Math.round(weight) === value,
            onTap: () => {
              set({ tex: texOfWeight(value) });
              onKeep();
            },
          }))}
        />
        <div className="fields beside">
          <NumberField label="Weight" least={1} most={1000} decimals={1} value={weight} onValue={(value) => set({ tex: texOfWeight(value) })} onEmpty={() => set({ tex: undefined })} {...keeping} />
          <NumberField label="Tex" least={1} most={1000} decimals={1} value={thread.tex} onValue={(tex) => set({ tex })} onEmpty={() => set({ tex: undefined })} {...keeping} />
        </div>
        <Aside>Two ways of saying the same: Tex is grams to a kilometre, the weight is kilometres to a kilogram. A higher weight is a finer thread.</Aside>
      </SlipPart>
      <SlipPart title="What it is called">
        <TextField
          label="Name"
          value={thread.name ?? ''}
          onKeep={(name) => {
            set({ name: name.trim() });
            onKeep();
          }}
        />
        <LengthField label="How thick it measures" value={thread.thickness} least={1 / 1000} most={1} onValue={(thickness) => set({ thickness })} onEmpty={() => set({ thickness: undefined })} hint="May stay empty. Wind 20 turns side by side and divide their width by 20." {...keeping} />
      </SlipPart>
    </Slip>
  );
}

const BOBBINS = [
  { name: 'class L', yards: 120, from: 110, to: 130 },
  { name: 'class M', yards: 220, from: 200, to: 250 },
] as const;

export function BobbinSlip() {
  const bobbin: Bobbin = useSession((state) => state.evaluation.plan.materials.bobbin) ?? {};
  const unit = useSession((state) => state.evaluation.plan.shownIn);
  const { materials, onKeep, keeping } = useTyped();
  const set = (change: Parameters<typeof materials<'bobbin'>>[2]) => materials('bobbin', 'Bobbin', change);
  const metric = unit === 'cm';
  const perYard = metric ? CM_PER_YARD / 100 : 1;
  return (
    <Slip title="Bobbin" about="How far one goes">
      <SlipPart title="How much is on it">
        <Taps
          label="Kinds"
          taps={BOBBINS.map(({ name, yards }) => ({
            name,
            taken: bobbin.name === name,
            onTap: () => {
              set({ name, yards });
              onKeep();
            },
          }))}
        />
        {BOBBINS.filter(({ name }) => name === bobbin.name).map(({ name, from, to }) => (
          <Aside key={name}>{`A ${name} bobbin holds about ${Math.round(from * perYard)} to ${Math.round(to * perYard)} ${metric ? 'm' : 'yd'} of 50 weight. They are not standard: sew one empty and enter what it held.`}</Aside>
        ))}
        <NumberField
          label={metric ? 'Metres on a bobbin' : 'Yards on a bobbin'}
          unit={metric ? 'm' : 'yd'}
          least={1}
          most={10_000 * perYard}
          decimals={1}
          value={bobbin.yards === undefined ? undefined : bobbin.yards * perYard}
          onValue={(length) => set({ yards: Math.max(1, length / perYard) })}
          onEmpty={() => set({ yards: undefined })}
          {...keeping}
        />
      </SlipPart>
      <SlipPart title="What it is called">
        <TextField
          label="Name"
          value={bobbin.name ?? ''}
          onKeep={(name) => {
            set({ name: name.trim() });
            onKeep();
          }}
        />
      </SlipPart>
    </Slip>
  );
}

export function BattingSlip() {
  const batting: Batting = useSession((state) => state.evaluation.plan.materials.batting) ?? {};
  const length = useLengths();
  const { materials, onKeep, keeping } = useTyped();
  const set = (change: Parameters<typeof materials<'batting'>>[2]) => materials('batting', 'Batting', change);
  const kind = BATTINGS.find(({ name }) => name === batting.name);
  const reading = batting.gapMeans ?? 'line-distance';
  return (
    <Slip title="Batting" about="How far apart the quilting may be">
      <SlipPart title="What the label says">
        <LengthField label="Widest gap on the label" value={batting.widestGap} least={1 / 16} most={100} onValue={(widestGap) => set({ widestGap })} onEmpty={() => set({ widestGap: undefined })} {...keeping} />
        <Choices
          label="The label means"
          choices={[
            { value: 'line-distance', name: 'the distance between lines' },
            { value: 'open-square', name: 'the side of an open square' },
          ]}
          value={reading}
          onChoose={(gapMeans) => {
            set({ gapMeans });
            onKeep();
          }}
        />
        {batting.widestGap === undefined ? (
          <Sentence>Without a label, quilt every 1 to 2 in.</Sentence>
        ) : (
          <Sentence>{reading === 'line-distance' ? `No two lines of quilting farther apart than ${length(batting.widestGap)}.` : `No square larger than ${length(batting.widestGap)} by ${length(batting.widestGap)} without quilting.`}</Sentence>
        )}
        <Aside>Labels mean one or the other, and some do not say. Where yours does not, ask the maker.</Aside>
      </SlipPart>
      <SlipPart title="Kinds, where the label is lost">
        <Taps
          label="Takes the nearer of what labels of the kind say"
          taps={BATTINGS.map(({ name, from }) => ({
            name,
            taken: batting.name === name,
            onTap: () => {
              set({ name, widestGap: from });
              onKeep();
            },
          }))}
        />
        {kind && <Aside>{kind.from === kind.to ? `Labels of this kind say up to ${length(kind.to)}. The label on yours wins.` : `Labels of this kind say ${length(kind.from)} to ${length(kind.to)}. The label on yours wins.`}</Aside>}
      </SlipPart>
      <SlipPart title="What it is called">
        <TextField
          label="Name"
          value={batting.name ?? ''}
          onKeep={(name) => {
            set({ name: name.trim() });
            onKeep();
          }}
        />
      </SlipPart>
    </Slip>
  );
}

const STITCHES_MM = [2, 2.5, 3];

export function MachineSlip() {
  const machine = useSession((state) => state.evaluation.plan.machine);
  const fine = useFineLengths();
  const { machine: setMachine, onKeep, keeping } = useTyped();
  const set = (change: Parameters<typeof setMachine>[1]) => setMachine('Machine and stitch', change);
  const { stitchLength, stitchesPerMinute, kind, reach } = machine;
  const perInch = stitchLength === undefined ? undefined : stitchesPerInch(stitchLength);
  return (
    <Slip title="Machine and stitch" about="What it is sewn on">
      <SlipPart title="Stitch">
        <Taps
          label="Usual lengths"
          taps={STITCHES_MM.map((mm) => ({
            name: `${mm} mm`,
            taken: stitchLength !== undefined && Math.abs(stitchLength * MM_PER_INCH - mm) < 0.005,
            onTap: () => {
              set({ stitchLength: mm / MM_PER_INCH });
              onKeep();
            },
          }))}
        />
        <div className="fields beside">
          <NumberField label="Stitch length" unit="mm" least={0.1} most={25} decimals={2} value={stitchLength === undefined ? undefined : stitchLength * MM_PER_INCH} onValue={(mm) => set({ stitchLength: mm / MM_PER_INCH })} onEmpty={() => set({ stitchLength: undefined })} {...keeping} />
          <NumberField label="Stitches to the inch" least={1.02} most={254} decimals={1} value={perInch} onValue={(count) => set({ stitchLength: stitchLengthOf(count) })} onEmpty={() => set({ stitchLength: undefined })} {...keeping} />
        </div>
        <Aside>25.4 divided by one gives the other. 10 or 11 to the inch is usual for quilting.</Aside>
      </SlipPart>
      <SlipPart title="Machine">
        <Choices
          label="It is a"
          choices={[
            { value: 'sit-down', name: 'sit-down machine' },
            { value: 'frame', name: 'frame machine' },
          ]}
          value={kind}
          onChoose={(value) => {
            set({ kind: value });
            onKeep();
          }}
        />
        {kind === 'frame' && <LengthField label="Depth it reaches before the quilt is rolled on" value={reach} least={1} most={1000} onValue={(value) => set({ reach: value })} onEmpty={() => set({ reach: undefined })} {...keeping} />}
        <NumberField label="Stitches a minute" least={1} most={10_000} whole value={stitchesPerMinute} onValue={(value) => set({ stitchesPerMinute: value })} onEmpty={() => set({ stitchesPerMinute: undefined })} {...keeping} />
        {stitchLength !== undefined && stitchesPerMinute !== undefined && <Aside>{`Sews ${fine(Math.round(stitchLength * stitchesPerMinute * 2) / 2)} a minute while it runs.`}</Aside>}
        <TextField
          label="Name"
          value={machine.name ?? ''}
          onKeep={(name) => {
            set({ name: name.trim() });
            onKeep();
          }}
        />
      </SlipPart>
      <SlipPart title="Take care"><Cautions /></SlipPart>
    </Slip>
  );
}
