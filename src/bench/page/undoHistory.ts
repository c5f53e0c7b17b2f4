import {
  ICommandService,
  IContextService,
  IUndoRedoService,
  IUniverInstanceService,
  LocalUndoRedoService,
  type DependencyOverride,
  type IUndoRedoItem,
} from "@univerjs/core";

/** A history of changes that can take several of them as one step. */
export interface OneStepHistory extends IUndoRedoService {
  /** All that `work` changes is one step: undone from the last change to the first. */
  readonly asOneStep: (work: () => void) => void;
}

class UndoHistory extends LocalUndoRedoService implements OneStepHistory {
  private collected: IUndoRedoItem[] | null = null;

  override pushUndoRedo(item: IUndoRedoItem): void {
    if (this.collected === null) super.pushUndoRedo(item);
    else this.collected.push(item);
  }

  asOneStep(work: () => void): void {
    const steps: IUndoRedoItem[] = [];
    this.collected = steps;
    try {
      work();
    } finally {
      this.collected = null;
      // The editor of the selected cell has a history of its own, beside the workbook's.
      const byUnit = new Map<string, IUndoRedoItem[]>();
      for (const step of steps) byUnit.set(step.unitID, [...(byUnit.get(step.unitID) ?? []), step]);
      for (const [first, ...later] of byUnit.values()) {
        if (first !== undefined) this.pushUndoRedo(merged(first, later));
      }
    }
  }
}

function merged(first: IUndoRedoItem, later: readonly IUndoRedoItem[]): IUndoRedoItem {
  const steps = [first, ...later];
  return {
    ...first,
    redoMutations: steps.flatMap(({ redoMutations }) => redoMutations),
    undoMutations: steps.toReversed().flatMap(({ undoMutations }) => undoMutations),
  };
}

/** Puts our history in the place of the grid's own. */
export const undoHistoryOverride: DependencyOverride = [
  [
    IUndoRedoService,
    {
      useFactory: (
        instances: IUniverInstanceService,
        commands: ICommandService,
        contexts: IContextService,
      ) => new UndoHistory(instances, commands, contexts),
      deps: [IUniverInstanceService, ICommandService, IContextService],
    },
  ],
];
