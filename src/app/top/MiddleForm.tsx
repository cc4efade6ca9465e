// The middle of the top: blocks or one piece of cloth, measured as a quilter measures them.

import type { Blocks } from '../../model/plan.ts';
import { keepTyped } from '../../session/typing.ts';
import { blocksOf, middleOfBlocks, middleOfCloth, setBlocks, setSetting, typeBlocks, typeCloth } from '../../session/top/middle.ts';
import { Switch } from '../frame/Switch.tsx';
import { useSession, useTheSession } from '../use-session.ts';
import { LengthField } from '../words/LengthField.tsx';
import { NumberField } from '../words/NumberField.tsx';
import { OneOf } from '../words/OneOf.tsx';

const LONGEST = 400;
const MOST = 200;

export function MiddleForm() {
  const session = useTheSession();
  const top = useSession((state) => state.evaluation.plan.top);
  const laid = useSession((state) => state.evaluation.top);
  const borders = 2 * top.borders.reduce((sum, { width }) => sum + width, 0);
  const choose = (id: 'blocks' | 'cloth') => (id === 'blocks' ? middleOfBlocks(session) : middleOfCloth(session, [laid.width - borders, laid.height - borders]));
  return (
    <div className="top-form">
      <OneOf label="The middle is" options={[{ id: 'blocks', name: 'pieced blocks' }, { id: 'cloth', name: 'one piece of cloth' }]} chosen={top.blocks ? 'blocks' : 'cloth'} onChoose={choose} />
      {top.blocks ? <BlocksForm blocks={blocksOf(top)} /> : <ClothForm />}
    </div>
  );
}

function BlocksForm({ blocks }: { readonly blocks: Blocks }) {
  const session = useTheSession();
  const keep = () => keepTyped(session);
  const { setting, rows, columns, size, sashing } = blocks;
  const onPoint = setting === 'on-point';
  return (
    <>
      <OneOf label="Blocks are set" options={[{ id: 'straight', name: 'straight' }, { id: 'on-point', name: 'on point' }]} chosen={setting} onChoose={(id) => setSetting(session, id)} />
      <div className="top-pair">
        <NumberField label="blocks across" whole least={1} most={MOST} value={columns} onValue={(value) => typeBlocks(session, 'Blocks across', { columns: value })} onKeep={keep} />
        <NumberField label="blocks down" whole least={1} most={MOST} value={rows} onValue={(value) => typeBlocks(session, 'Blocks down', { rows: value })} onKeep={keep} />
      </div>
      <div className="top-pair">
        <LengthField label={onPoint ? 'finished side of a block' : 'finished width of a block'} least={0.5} most={LONGEST} value={size[0]} onValue={(value) => typeBlocks(session, 'Width of a block', { size: [value, onPoint ? value : size[1]] })} onKeep={keep} />
        {!onPoint && <LengthField label="finished height of a block" least={0.5} most={LONGEST} value={size[1]} onValue={(value) => typeBlocks(session, 'Height of a block', { size: [size[0], value] })} onKeep={keep} />}
      </div>
      <LengthField label="sashing between blocks" least={0} most={LONGEST} hint="0 for none." value={sashing} onValue={(value) => typeBlocks(session, 'Sashing', { sashing: value })} onKeep={keep} />
      {sashing > 0 && (
        <>
          <Switch name="Cornerstones where strips cross" on={blocks.cornerstones} onChange={(cornerstones) => setBlocks(session, 'Cornerstones', { cornerstones })} />
          <Switch name="Strips round the outside as well" on={blocks.sashedRound ?? false} onChange={(sashedRound) => setBlocks(session, 'Sashing round the outside', { sashedRound })} />
        </>
      )}
    </>
  );
}

function ClothForm() {
  const session = useTheSession();
  const [width, height] = useSession((state) => state.evaluation.plan.top.panel?.size) ?? [0, 0];
  const keep = () => keepTyped(session);
  return (
    <div className="top-pair">
      <LengthField label="width" least={1} most={LONGEST} value={width} onValue={(value) => typeCloth(session, [value, height])} onKeep={keep} />
      <LengthField label="length" least={1} most={LONGEST} value={height} onValue={(value) => typeCloth(session, [width, value])} onKeep={keep} />
    </div>
  );
}
