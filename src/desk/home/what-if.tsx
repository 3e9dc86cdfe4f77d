import { useState } from 'preact/hooks';
import { SCENARIO_IDS, SCENARIOS, type ScenarioId } from '../../home/scenarios.ts';
import { SEASON_IDS, type SeasonId } from '../../home/seasons.ts';
import { useDesk } from '../desk.ts';
import { Said } from '../screen.tsx';
import { useHome } from './ask.ts';
import { AskForm } from './asking.tsx';
import { Choice, Choices, type HomeChoices } from './choices.tsx';
import { HomeCurveStrip } from './curve.tsx';
import type { Came, HomeRequest } from './protocol.ts';

const SPANS = ['3', '14', '60', '182'] as const;
type Span = (typeof SPANS)[number];

/** Something happens in the house, and one sees what comes of it beside the same home without. */
export function WhatIfPart(choices: HomeChoices) {
  const desk = useDesk();
  const { t } = desk;
  const [scenario, setScenario] = useState<ScenarioId>('power');
  const [season, setSeason] = useState<SeasonId>('mild');
  const [span, setSpan] = useState<Span>(spanOf('power'));
  const life = useHome<Extract<HomeRequest, { kind: 'what-if' }>>(desk);
  return (
    <section class="card home-whatif" aria-labelledby="home-whatif">
      <h2 id="home-whatif">{t('home.whatif')}</h2>
      <p>{t('home.whatif.lead')}</p>
      <AskForm
        asking={life}
        id="what-if"
        begin={t('home.whatif.run')}
        onBegin={() => life.ask({ kind: 'what-if', home: choices.home, scenario, season, span_d: Number(span) })}
      >
        <Choice
          label={t('home.whatif.scenario')}
          value={scenario}
          options={SCENARIO_IDS.map((id) => ({ id, name: t(`home.scenario.${id}`) }))}
          onChange={(id) => {
            setScenario(id);
            setSpan(spanOf(id));
          }}
        />
        <Choices {...choices} />
        <Choice
          label={t('home.whatif.season')}
          value={season}
          options={SEASON_IDS.map((id) => ({ id, name: t(`home.season.${id}`) }))}
          onChange={setSeason}
        />
        <Choice
          label={t('home.whatif.span')}
          value={span}
          options={SPANS.map((id) => ({ id, name: t(`home.span.${id}`) }))}
          onChange={setSpan}
        />
      </AskForm>
      <div aria-live="polite">{life.reply !== undefined && <Result came={life.reply.came} />}</div>
    </section>
  );
}

/** The span that is offered first: the one in which it shows whole. */
function spanOf(scenario: ScenarioId): Span {
  return SPANS.find((span) => Number(span) >= SCENARIOS[scenario].span_d) ?? '182';
}

function Result({ came }: { came: Came }) {
  const { t } = useDesk();
  return (
    <div class="home-result" data-came>
      <section>
        <h3>{`${t(`home.scenario.${came.scenario}`)}: ${t('home.whatif.effects')}`}</h3>
        <ul class="home-effects">
          {came.effects.map((effect, i) => (
            <li key={i}>
              <Said message={effect} />
            </li>
          ))}
        </ul>
        <p class="home-advice">{t('home.whatif.caution')}</p>
      </section>
      <section>
        <h3>{t('home.whatif.curves')}</h3>
        {came.curves.map((curve) => (
          <HomeCurveStrip key={curve.id} came={came} curve={curve} />
        ))}
      </section>
    </div>
  );
}
