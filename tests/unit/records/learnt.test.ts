/** What a call that has ended comes to as a record of learning. */
import { describe, expect, it } from 'vitest';
import { learntCsv } from '../../../src/records/learnt/learnt-csv.ts';
import { learnt, prepared } from './taken.ts';

describe('a graded call', () => {
  const solved = learnt('sunny-line', 'graded');

  it('solved by its own solution is passed and completed, with the score of its judgement', () => {
    expect(solved).toMatchObject({ activity: 'sunny-line', mode: 'graded', completed: true, passed: true, pass: 70 });
    expect(solved.score).toBeGreaterThanOrEqual(90);
    expect(solved.duration_s).toBe(95.5);
  });

  it('says what was decided, named as the cause and done, beside what was right', () => {
    expect(solved.interactions.find(({ id }) => id === 'decision')).toMatchObject({
      kind: 'choice',
      result: 'correct',
    });
    expect(solved.interactions.find(({ id }) => id === 'cause')).toMatchObject({
      response: ['line-split'],
      correct: [['line-split']],
      result: 'correct',
    });
    const steps = solved.interactions.find(({ id }) => id === 'steps');
    expect(steps).toMatchObject({ response: prepared('sunny-line').call.solution.map((step) => step.do) });
    expect(steps?.result).toBeUndefined();
  });

  it('has a line of its score as a number each, which add up to it', () => {
    const lines = solved.interactions.flatMap((one) => (one.kind === 'numeric' ? [one] : []));
    expect(Math.round(lines.reduce((sum, { response }) => sum + response, 0))).toBe(solved.score);
    expect(lines.reduce((sum, { weighting }) => sum + weighting, 0)).toBe(100);
    for (const { response, weighting, result } of lines) {
      expect(result).toBe(response === weighting ? 'correct' : 'incorrect');
    }
  });

  it('closed by phone that wanted a visit is not passed, and its decision was wrong', () => {
    const phone = learnt('sunny-line', 'graded', [{ do: 'ask-danger' }, { do: 'decide-close' }]);
    expect(phone).toMatchObject({ passed: false, completed: true });
    expect(phone.interactions.find(({ id }) => id === 'decision')).toMatchObject({
      response: ['close'],
      result: 'incorrect',
    });
    expect(phone.interactions.find(({ id }) => id === 'cause')).toMatchObject({ response: [], result: 'incorrect' });
  });

  it('stopped at a breach of life safety has no points, and no decision where none was taken', () => {
    const stopped = learnt('storm-light', 'graded', [{ do: 'tell-open-panel' }]);
    expect(stopped).toMatchObject({ passed: false, score: 0 });
    expect(stopped.interactions.map(({ id }) => id)).toEqual(['steps', 'flags', 'score.safety']);
  });

  it('tells how long into the session an action was, where the page saw it', () => {
    const wall = { started_ms: 0, ended_ms: 60_000, after_s: { 'decide-close': 41.25 } };
    const { interactions } = learnt('storm-light', 'graded', undefined, wall);
    expect(interactions.find(({ id }) => id === 'decision')?.latency_s).toBe(41.25);
    expect(interactions.filter(({ latency_s }) => latency_s !== undefined).length).toBe(1);
  });
});

it('practice is completed and not judged, whatever its score', () => {
  expect(learnt('storm-light', 'practice').passed).toBeUndefined();
  expect(learnt('storm-light', 'coached').passed).toBeUndefined();
});

it('is a row for each interaction in a spreadsheet, under the name that was typed', () => {
  const csv = learntCsv([['=K., the first', learnt('storm-light', 'graded')]]);
  const [head, ...rows] = csv.trimEnd().split('\r\n');
  expect(head).toBe('who,activity,mode,passed,score,interaction,type,response,correct,result,weighting,latency_s');
  expect(rows.length).toBe(8);
  expect(rows[0]).toBe(`"'=K., the first",storm-light,graded,true,100,decision,choice,close,close,correct,0,`);
});
