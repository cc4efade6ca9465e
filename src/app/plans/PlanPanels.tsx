// The panel of plans that is up.

import { NamePlanDialog } from './NamePlanDialog.tsx';
import { PlansPanel } from './PlansPanel.tsx';
import type { PlanActions, PlanPanel } from './use-plans.ts';
import { VersionsPanel } from './VersionsPanel.tsx';

export interface PlanPanelsProps {
  readonly panel: PlanPanel;
  readonly actions: PlanActions;
  readonly onOpenFile: () => void;
}

export function PlanPanels({ panel, actions, onOpenFile }: PlanPanelsProps) {
  const onClose = () => actions.show({ kind: 'none' });
  switch (panel.kind) {
    case 'none':
      return null;
    case 'name':
      return <NamePlanDialog onClose={onClose} />;
    case 'plans':
      return (
        <PlansPanel
          onLay={(id) => void actions.lay(id)}
          onNew={() => void actions.begin()}
          onOpenFile={onOpenFile}
          onVersions={(plan) => actions.show({ kind: 'versions', plan })}
          onClose={onClose}
        />
      );
    case 'versions':
      return <VersionsPanel plan={panel.plan} onGoBack={(version) => void actions.goBack(version)} onMakePlan={(version) => void actions.makePlanOf(version)} onClose={onClose} />;
  }
}
