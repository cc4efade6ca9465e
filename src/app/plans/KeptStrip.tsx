// A strip of paper under the header: that the plan is not kept and what to do about it, or news from another window.

import { Button } from 'react-aria-components/Button';
import { PROBLEMS } from './said.ts';
import { useKeeper, useTheKeeper } from './use-kept.ts';
import './kept-strip.css';

export interface KeptStripProps {
  readonly onSave: () => void;
  readonly onPlans: () => void;
  readonly onVersions: () => void;
}

export function KeptStrip({ onSave, onPlans, onVersions }: KeptStripProps) {
  const keeper = useTheKeeper();
  const problem = useKeeper((state) => state.problem);
  const news = useKeeper((state) => state.news);
  return (
    <div className="kept-strip">
      {problem && (
        <div className="strip-row">
          <p role="alert">{PROBLEMS[problem]}</p>
          <Button className="button" onPress={onSave}>Save to a file</Button>
          {problem === 'full' && <Button className="button" onPress={onPlans}>Your plans</Button>}
          {problem !== 'no-database' && <Button className="button" onPress={keeper.tryAgain}>Try again</Button>}
        </div>
      )}
      {news !== undefined && (
        <div className="strip-row">
          <p role="alert">{news}</p>
          <Button className="button" onPress={onVersions}>Versions</Button>
          <Button className="button" onPress={() => keeper.tellNews(undefined)}>Put away</Button>
        </div>
      )}
    </div>
  );
}
