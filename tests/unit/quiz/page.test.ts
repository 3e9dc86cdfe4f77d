/** `docs/quiz.md` lists the families that there are, each under its topic, with its title and its source. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { skillsOf, TOPICS } from '../../../src/quiz/topics.ts';
import { say } from '../../../src/service/index.ts';
import { speak } from '../../../src/words/speak.ts';
import { ENGLISH } from '../spoken.ts';

const page = readFileSync('docs/quiz.md', 'utf8');
const english = speak(ENGLISH, 'us', true);

it('has a part for each topic, and in it a line for each of its families and no other', () => {
  const parts = page.split('\n### ').slice(1);
  expect(parts.map((part) => part.split('\n')[0])).toEqual(
    TOPICS.map((topic) => `${english(say(`drills.topic.${topic}`))} (\`${topic}\`)`),
  );
  TOPICS.forEach((topic, i) => {
    const lines = (parts[i] ?? '').split('\n').filter((line) => line.startsWith('| `'));
    const listed = lines.map((line) => line.split(' | ').map((cell) => cell.replace(/^\| | \|$/g, '')));
    expect(listed.map(([id, title, , , source]) => [id, title, source])).toEqual(
      skillsOf(topic).map((skill) => [
        `\`${skill}\``,
        english(say(`drills.skill.${skill}`)),
        english(say(`drill.source.${skill}`)),
      ]),
    );
  });
});

it('tells how many families there are', () => {
  const count = TOPICS.reduce((sum, topic) => sum + skillsOf(topic).length, 0);
  expect(page).toContain(`numbers: ${count} families`);
});
