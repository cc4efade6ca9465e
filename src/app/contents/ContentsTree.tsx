// The list beside the table: every area, its lines, every sheet and its placements, by name. What can be done by pointing
// at the quilt can be done from here.

import { type ReactNode, useMemo, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { type Key, type Selection as Keys, Tree, TreeItem, TreeItemContent } from 'react-aria-components/Tree';
import { areaGroups, linesByArea, sheetsInOrder } from '../../session/contents.ts';
import { select, selectNothing, zoomToArea, zoomToLine } from '../../session/look.ts';
import type { Selection } from '../../session/selection.ts';
import { Said } from '../words/Said.tsx';
import { useLengths } from '../words/lengths.ts';
import { useSession, useTheSession } from '../use-session.ts';
import './contents.css';

/** Under one row at most so many are listed. */
const MOST_LISTED = 500;

export function ContentsTree() {
  const session = useTheSession();
  const evaluation = useSession((state) => state.evaluation);
  const selection = useSession((state) => state.selection);
  const length = useLengths();
  const [open, setOpen] = useState<ReadonlySet<Key>>(new Set());
  const groups = useMemo(() => areaGroups(evaluation.top), [evaluation.top]);
  const lines = useMemo(() => linesByArea(evaluation), [evaluation]);
  const sheets = sheetsInOrder(evaluation.plan);

  return (
    <Tree
      className="contents"
      aria-label="On the table"
      selectionMode="single"
      selectionBehavior="toggle"
      selectedKeys={keysOf(selection)}
      onSelectionChange={(keys) => {
        const key = onlyKey(keys);
        const picked = key === undefined ? undefined : selectionOf(key);
        if (!picked) return selectNothing(session);
        select(session, picked);
        if (picked.kind === 'area') zoomToArea(session, picked.area);
        if (picked.kind === 'line') zoomToLine(session, picked.line);
      }}
      expandedKeys={open}
      onExpandedChange={setOpen}
    >
      {groups.map((group) => (
        <Row key={group.id} id={`group:${group.id}`} name={group.name} aside={`${group.areas.length}`} parent plain>
          {allOrFirst(group.areas, open.has(`group:${group.id}`)).map((area) => {
              const inArea = lines.get(area.id) ?? [];
              const id = `area:${area.id}`;
              return (
                <Row key={id} id={id} name={area.name} aside={`${length(area.width)} by ${length(area.height)}`} parent={inArea.length > 0}>
                  {allOrFirst(inArea, open.has(id)).map((line) => (
                    <Row key={line.id} id={`line:${line.id}`} name={`${passName(evaluation.plan.sheets, line)}, ${line.image + 1}`} aside={length(line.length)} />
                  ))}
                </Row>
              );
            })}
        </Row>
      ))}
      {sheets.map(([sheetId, sheet]) => {
        const placements = Object.entries(sheet.placements);
        return (
          <Row key={sheetId} id={`sheet:${sheetId}`} name={`Sheet: ${sheet.name}`} aside={sheet.chosen ? 'sewn' : 'not sewn'} parent={placements.length > 0}>
            {allOrFirst(placements, open.has(`sheet:${sheetId}`)).map(([id, placement]) => (
              <Row
                key={id}
                id={`placement:${sheetId}|${id}`}
                name={placement.name ?? evaluation.plan.kit.templates[placement.template]?.name ?? placement.template}
                aside={Object.keys(placement.passes).length === 1 ? '1 pass' : `${Object.keys(placement.passes).length} passes`}
              />
            ))}
          </Row>
        );
      })}
    </Tree>
  );
}

/** While a row is closed it holds only its first child, so that ten thousand lines cost nothing and the row is still known to open. */
function allOrFirst<Item>(items: readonly Item[], isOpen: boolean): readonly Item[] {
  return items.slice(0, isOpen ? MOST_LISTED : 1);
}

interface RowProps {
  readonly id: string;
  readonly name: string;
  readonly aside: string;
  readonly parent?: boolean;
  /** Opens and closes, and cannot be picked. */
  readonly plain?: boolean;
  readonly children?: ReactNode;
}

function Row({ id, name, aside, parent = false, plain = false, children }: RowProps) {
  return (
    <TreeItem id={id} textValue={`${name}, ${aside}`} hasChildItems={parent} className={`row${plain ? ' plain' : ''}`}>
      <TreeItemContent>
        {({ isExpanded }) => (
          <>
            {parent ? (
              <Button slot="chevron" className="chevron" aria-label={isExpanded ? `Close ${name}` : `Open ${name}`}>
                <svg viewBox="0 0 12 12" width="12" height="12" aria-hidden="true"><path d="M4.5 2 8.5 6 4.5 10" /></svg>
              </Button>
            ) : (
              <span className="chevron" />
            )}
            <span className="row-name"><Said>{name}</Said></span>
            <span className="row-aside"><Said>{aside}</Said></span>
          </>
        )}
      </TreeItemContent>
      {children}
    </TreeItem>
  );
}

type PlanSheets = Parameters<typeof sheetsInOrder>[0]['sheets'];

/** What a line is called: its sheet and, where the sheet has more than one, its pass. */
function passName(sheets: PlanSheets, line: { readonly sheet: string; readonly placement: string; readonly pass: string }): string {
  const sheet = sheets[line.sheet];
  const pass = sheet?.placements[line.placement]?.passes[line.pass];
  return `${sheet?.name ?? line.sheet}, ${pass?.name ?? `pass ${line.pass}`}`;
}

function keysOf(selection: Selection): readonly string[] {
  switch (selection.kind) {
    case 'area':
      return [`area:${selection.area}`];
    case 'line':
      return [`line:${selection.line}`];
    case 'sheet':
      return [`sheet:${selection.sheet}`];
    case 'placement':
      return [`placement:${selection.sheet}|${selection.placement}`];
    case 'nothing':
    case 'finding':
      return [];
  }
}

function selectionOf(key: string): Selection | undefined {
  const [, kind, id] = /^(\w+):(.*)$/.exec(key) ?? [];
  if (id === undefined) return undefined;
  if (kind === 'area') return { kind: 'area', area: id };
  if (kind === 'line') return { kind: 'line', line: id };
  if (kind === 'sheet') return { kind: 'sheet', sheet: id };
  const [sheet, placement] = id.split('|');
  return kind === 'placement' && sheet !== undefined && placement !== undefined ? { kind: 'placement', sheet, placement } : undefined;
}

function onlyKey(keys: Keys): string | undefined {
  if (keys === 'all') return undefined;
  const [key] = keys;
  return key === undefined ? undefined : String(key);
}
