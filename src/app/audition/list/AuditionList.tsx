// The list beside the table: sheets, what lies on them, its pins and its passes. Whatever can be done on the table can be done from here.

import { type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { type Key, Tree, TreeItem, TreeItemContent } from 'react-aria-components/Tree';
import { styleOf } from '../../../model/length-style.ts';
import { flipPicked, turnPicked } from '../../../session/lay/edit.ts';
import { type OnTable, workOn } from '../../../session/lay/on-table.ts';
import { pickPlacement } from '../../../session/lay/pick.ts';
import { layingOf } from '../../../session/lay/setting.ts';
import { select } from '../../../session/look.ts';
import type { Selection } from '../../../session/selection.ts';
import { readPasses, sewTheRest, takePassAway, turnPassRound } from '../../../session/sheet/passes.ts';
import { readPins, takePinOut } from '../../../session/sheet/pins.ts';
import { duplicatePicked, placementName, putPlacementAway } from '../../../session/sheet/placements.ts';
import { chooseToSew, copySheet, leaveOut, moveSheet, putSheetAway } from '../../../session/sheet/sheets.ts';
import { spokenText } from '../../../session/sheet/spoken.ts';
import { useSession, useTheSession } from '../../use-session.ts';
import { Said } from '../../words/Said.tsx';
import { type Command, MoreMenu } from '../slip/MoreMenu.tsx';
import { useStack } from '../use-on-table.ts';
import '../../contents/contents.css';

export function AuditionList({ on }: { readonly on: OnTable }) {
  const session = useTheSession();
  const evaluation = useSession((state) => state.evaluation);
  const selection = useSession((state) => state.selection);
  const stack = useStack();
  const [opened, setOpened] = useState<ReadonlySet<Key>>(new Set());
  const [closed, setClosed] = useState<ReadonlySet<Key>>(new Set());
  const state = { ...session.getState(), evaluation };
  const style = styleOf(evaluation.plan);
  const here = on.sheet ? `sheet:${on.sheet.id}` : '';
  const open = new Set([...opened, ...(closed.has(here) ? [] : [here])]);
  const sheets = stack?.sheets ?? [];

  const pick = (key: string) => {
    const [kind, sheet = '', placement = '', pass = ''] = key.split('|');
    if (kind?.startsWith('sheet:')) return workOn(session, { sheet: kind.slice('sheet:'.length) });
    if (sheet !== on.sheet?.id) workOn(session, { sheet });
    if (kind === 'pass') select(session, { kind: 'placement', sheet, placement, pass });
    else pickPlacement(session, sheet, placement);
  };

  return (
    <Tree
      className="contents"
      aria-label="Sheets and what lies on them"
      selectionMode="single"
      selectionBehavior="toggle"
      selectedKeys={keysOf(selection, here)}
      onSelectionChange={(keys) => {
        for (const key of keys === 'all' ? [] : keys) pick(String(key));
      }}
      expandedKeys={open}
      onExpandedChange={(keys) => {
        setOpened(keys);
        setClosed(new Set([...open].filter((key) => !keys.has(key))));
      }}
    >
      {sheets.map(({ id: sheet, sheet: { name, chosen, placements }, letter }, i) => (
        <Row
          key={`sheet:${sheet}`}
          id={`sheet:${sheet}`}
          name={`${letter}  ${name}`}
          aside={chosen ? 'sewn' : 'not sewn'}
          isParent={Object.keys(placements).length > 0}
          commands={[
            { name: 'Lay it on the table', onDo: () => workOn(session, { sheet }) },
            chosen ? { name: 'Leave it out', onDo: () => leaveOut(session, sheet) } : { name: 'Choose this', onDo: () => chooseToSew(session, sheet) },
            { name: 'Copy it', onDo: () => copySheet(session, sheet) },
            { name: 'Move it down', isDisabled: i === 0, onDo: () => moveSheet(session, sheet, -1) },
            { name: 'Move it up', isDisabled: i === sheets.length - 1, onDo: () => moveSheet(session, sheet, 1) },
            { name: 'Put away', onDo: () => putSheetAway(session, sheet) },
          ]}
        >
          {Object.keys(placements).map((id) => {
            const key = `placement|${sheet}|${id}`;
            const laying = sheet === on.sheet?.id && open.has(key) ? layingOf(state, id) : undefined;
            const count = Object.keys(placements[id]!.passes).length;
            const pins = placements[id]!.registrations.length;
            const withIt = (then: () => void) => () => {
              pick(key);
              then();
            };
            return (
              <Row
                key={key}
                id={key}
                name={placementName(state, sheet, id)}
                aside={`${pins === 1 ? '1 pin' : `${pins} pins`}, ${count === 1 ? '1 pass' : `${count} passes`}`}
                isParent={sheet === on.sheet?.id && count + pins > 0}
                commands={[
                  { name: 'Flip', onDo: withIt(() => flipPicked(session)) },
                  { name: 'Turn 90 degrees clockwise', onDo: withIt(() => turnPicked(session, 90)) },
                  { name: 'Turn 1 degree clockwise', onDo: withIt(() => turnPicked(session, 1)) },
                  { name: 'Turn 1 degree counterclockwise', onDo: withIt(() => turnPicked(session, -1)) },
                  { name: 'Duplicate', onDo: withIt(() => duplicatePicked(session)) },
                  { name: 'Put away', onDo: () => putPlacementAway(session, sheet, id) },
                ]}
              >
                {laying
                  ? [
                      ...readPins(laying, style).map(({ index, spoken, problem }) => (
                        <Row key={`pin|${sheet}|${id}|${index}`} id={`pin|${sheet}|${id}|${index}`} name={spoken ? spokenText(spoken) : (problem ?? '')} aside="pin" commands={[{ name: 'Take out', onDo: () => takePinOut(session, id, index) }]} />
                      )),
                      ...readPasses(state, laying, style).map(({ id: pass, spoken, pass: { name: passName, stop } }) => (
                        <Row
                          key={`pass|${sheet}|${id}|${pass}`}
                          id={`pass|${sheet}|${id}|${pass}`}
                          name={`${passName === undefined ? '' : `${passName}: `}${spokenText(spoken)}`}
                          aside="pass"
                          commands={[
                            { name: 'Sew it the other way', onDo: () => turnPassRound(session, id, pass) },
                            { name: 'Sew the other stretch', isDisabled: stop === 'all-round', onDo: () => sewTheRest(session, id, pass) },
                            { name: 'Take it away', onDo: () => takePassAway(session, id, pass) },
                          ]}
                        />
                      )),
                    ]
                  : null}
              </Row>
            );
          })}
        </Row>
      ))}
    </Tree>
  );
}

interface RowProps {
  readonly id: string;
  readonly name: string;
  readonly aside: string;
  readonly isParent?: boolean;
  readonly commands: readonly Command[];
  readonly children?: ReactNode;
}

function Row({ id, name, aside, isParent = false, commands, children }: RowProps) {
  return (
    <TreeItem id={id} textValue={`${name}, ${aside}`} hasChildItems={isParent} className="row">
      <TreeItemContent>
        {({ isExpanded }) => (
          <>
            {isParent ? (
              <Button slot="chevron" className="chevron" aria-label={isExpanded ? `Close ${name}` : `Open ${name}`}>
                <svg viewBox="0 0 12 12" width="12" height="12" aria-hidden="true"><path d="M4.5 2 8.5 6 4.5 10" /></svg>
              </Button>
            ) : (
              <span className="chevron" />
            )}
            <span className="row-name"><Said>{name}</Said></span>
            <span className="row-aside"><Said>{aside}</Said></span>
            {commands.length > 0 && <MoreMenu about={name} commands={commands} />}
          </>
        )}
      </TreeItemContent>
      {children}
    </TreeItem>
  );
}

function keysOf(selection: Selection, sheet: string): readonly string[] {
  if (selection.kind !== 'placement') return sheet === '' ? [] : [sheet];
  const { placement, pass } = selection;
  return [pass === undefined ? `placement|${selection.sheet}|${placement}` : `pass|${selection.sheet}|${placement}|${pass}`];
}
