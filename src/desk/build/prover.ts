/** Proves a draft, or lets the expert solve it. Runs in a worker that is ended to stop it. */
// Has the validator keep to the page's policy.
import '../resume.ts';
import course from '../../../scenarios/course.json';
import { problemsOf } from '../../build/checked.ts';
import type { Draft, Json } from '../../build/draft.ts';
import { checkCall, type Library, preparedIn } from '../../calls/check.ts';
import { causeName } from '../../calls/coach.ts';
import { difficulty } from '../../calls/course.ts';
import { drained } from '../../calls/drained.ts';
import { play } from '../../calls/players.ts';
import type { CallProof } from '../../calls/prove/prove.ts';
import { proving } from '../../calls/prove/prove.ts';
import { judged } from '../../calls/record.ts';
import type { Prepared } from '../../calls/setup.ts';
import { playSolution, stepsDone } from '../../calls/solution.ts';
import type { ProveReply, ProveRequest, Standing } from './protocol.ts';

type Tell = (reply: ProveReply) => void;

export function answerProve({ kind, draft }: ProveRequest, library: Library, tell: Tell): void {
  if (kind === 'solve') solve(draft, library, tell);
  else prove(draft, library, tell);
}

function prove(draft: Draft, library: Library, tell: Tell): void {
  const prepared = preparedOf(draft, library);
  if (!prepared) {
    tell({ kind: 'unsound', problems: problemsOf(draft, library) });
    return;
  }
  const stages = proving(prepared, (done, of) => {
    if (done % 20 === 0) tell({ kind: 'stage', stage: 'causes', done, of });
  });
  const proof = drained(stages, (stage) => tell({ kind: 'stage', stage }));
  const alikes = (proof.lookAlikes ?? []).map(({ cause, shared }) => ({ cause: causeName(cause), shared }));
  tell({ kind: 'proved', proof, harder: standing(proof), alikes });
}

/** Where a call would stand among those of the course. */
function standing({ difficulty: hard }: CallProof): Standing | undefined {
  if (!hard) return undefined;
  const here = difficulty({ call: '', families: [], bits: hard.bits, minutes: hard.expectedMinutes });
  return { easier: course.filter((one) => difficulty(one) < here).length, of: course.length };
}

/** What is wrong with the solution so far is no hindrance: it is written anew. */
function solve(draft: Draft, library: Library, tell: Tell): void {
  const stand_in: Json = [{ do: 'ask-danger' }];
  const unsolved = { ...draft, solution: stand_in };
  const prepared = preparedOf(unsolved, library);
  if (!prepared) {
    tell({ kind: 'unsound', problems: problemsOf(unsolved, library) });
    return;
  }
  const steps = stepsDone(play(prepared, 'expert'));
  const solved = { ...prepared, call: { ...prepared.call, solution: [...steps] } };
  const { passed, score } = judged(playSolution(solved));
  tell({ kind: 'solved', steps, passed, score });
}

/** The call with its property, where it is whole. */
function preparedOf(draft: Draft, library: Library): Prepared | undefined {
  const checked = checkCall(draft, library);
  return checked.ok ? preparedIn(checked.value, library) : undefined;
}
