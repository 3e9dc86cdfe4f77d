import { useState } from 'preact/hooks';
import { shownAt } from '../../build/draft.ts';
import { SURE_LINK } from '../../share/limits.ts';
import { bring, replace } from '../brought/bring.ts';
import { useDesk } from '../desk.ts';
import { toldOf } from '../engine.ts';
import { handOverText } from '../hand-over.ts';
import { Icon } from '../icons.tsx';
import { writeRoute } from '../routes.ts';
import { useBuild } from './state.ts';

/** The call as a file, also half made; whole, as a link and as sheets, and to be taken. */
export function Share({ whole }: { whole: boolean }) {
  const desk = useDesk();
  const { t } = desk;
  const build = useBuild();
  const [told, setTold] = useState<string | null>(null);
  const [link, setLink] = useState<string | null>(null);
  const id = shownAt(build.draft, 'id');
  const file = async () => {
    const reply = await build.line?.ask({ kind: 'text', draft: build.draft });
    if (reply !== undefined) handOverText(`${id === '' ? 'draft' : id}.json`, reply.text, 'application/json');
  };
  const makeLink = async () => {
    const reply = await build.line?.ask({ kind: 'link', draft: build.draft });
    if (reply?.link === undefined) return;
    if (!reply.link.ok) {
      setLink(null);
      setTold(t('build.link.long', { n: reply.link.length }));
      return;
    }
    const address = `${location.href.split('#')[0]}${reply.link.fragment}`;
    setLink(address);
    const copied = await navigator.clipboard?.writeText(address).then(
      () => true,
      () => false,
    );
    const long = reply.link.fragment.length > SURE_LINK ? ` ${t('build.link.sure', { n: address.length })}` : '';
    setTold(t(copied ? 'build.link.copied' : 'build.link.there') + long);
  };
  const sheet = async (who: 'trainee' | 'trainer') => {
    if (await keepCall()) location.hash = writeRoute({ screen: 'sheet', callId: id, who });
  };
  const take = async () => {
    if (await keepCall()) location.hash = writeRoute({ screen: 'call', callId: id });
  };
  /** Puts the call among those that came from elsewhere: an earlier state of it gives way. */
  async function keepCall(): Promise<boolean> {
    await build.keep();
    try {
      const reply = await build.line?.ask({ kind: 'text', draft: build.draft });
      if (reply === undefined) return false;
      const outcome = await bring(desk, 'file', reply.text);
      if (outcome.state === 'refused') {
        setTold(desk.speak.value(outcome.refusal.why));
        return false;
      }
      for (const one of outcome.others) await replace(desk, 'file', outcome.brought, one);
      return true;
    } catch (error) {
      desk.fail(toldOf(error));
      return false;
    }
  }
  const only = (work: () => Promise<void>) => () => void (whole ? work() : undefined);
  return (
    <div class="share">
      <h3>{t('build.share')}</h3>
      <div class="buttons">
        <button type="button" class="secondary" data-file onClick={() => void file()}>
          <Icon name="save" /> {t('build.file')}
        </button>
        <button type="button" class="secondary" data-link aria-disabled={!whole} onClick={only(makeLink)}>
          <Icon name="next" /> {t('build.link')}
        </button>
        <button type="button" class="secondary" aria-disabled={!whole} onClick={only(() => sheet('trainee'))}>
          <Icon name="sheet" /> {t('build.sheet.trainee')}
        </button>
        <button type="button" class="secondary" aria-disabled={!whole} onClick={only(() => sheet('trainer'))}>
          <Icon name="sheet" /> {t('build.sheet.trainer')}
        </button>
        <button type="button" class="primary" data-try aria-disabled={!whole} onClick={only(take)}>
          <Icon name="play" /> {t('build.try')}
        </button>
      </div>
      <p role="status" class="small">
        {told}
      </p>
      {link !== null && (
        <input
          class="link-text"
          type="text"
          readOnly
          aria-label={t('build.link')}
          value={link}
          onFocus={(event) => event.currentTarget.select()}
        />
      )}
    </div>
  );
}
