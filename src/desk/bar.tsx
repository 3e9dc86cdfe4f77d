import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { useDesk } from './desk.ts';
import { Icon, Mark } from './icons.tsx';
import { SkipLink } from './skip.tsx';

interface Props {
  readonly subtitle?: string | undefined;
  readonly children?: ComponentChildren;
  /** What the screen adds behind the options. */
  readonly more?: ComponentChildren;
}

/** The dark bar over every screen: where one is, what that screen adds, and language, units and sound. */
export function Bar({ subtitle, children, more }: Props) {
  const desk = useDesk();
  const [open, setOpen] = useState(false);
  return (
    <header class="bar">
      <SkipLink />
      <a class="brand" href="#/" aria-label={desk.t('app.name')}>
        <Mark />
        <span>{desk.t('app.name')}</span>
      </a>
      {subtitle !== undefined && <p class="subtitle">{subtitle}</p>}
      {children}
      <button
        type="button"
        class="pill menu-button"
        aria-expanded={open}
        aria-controls="bar-options"
        onClick={() => setOpen(!open)}
      >
        <Icon name="menu" />
        <span class="vh">{desk.t('bar.options')}</span>
      </button>
      <div id="bar-options" class={open ? 'bar-options open' : 'bar-options'}>
        <UnitsButton />
        <LanguageButton />
        <SoundButton />
        {more}
      </div>
    </header>
  );
}

function UnitsButton() {
  const desk = useDesk();
  const us = desk.settings.value.units === 'us';
  return (
    <button type="button" class="pill" onClick={() => void desk.change({ units: us ? 'si' : 'us' })}>
      {us ? desk.t('bar.units.us') : desk.t('bar.units.si')}
      <span class="vh">{us ? desk.t('bar.units.toSi') : desk.t('bar.units.toUs')}</span>
    </button>
  );
}

function LanguageButton() {
  const desk = useDesk();
  const english = desk.words.value.language === 'en';
  return (
    <button
      type="button"
      class="pill"
      lang={english ? 'es' : 'en'}
      onClick={() => void desk.change({ language: english ? 'es' : 'en' })}
    >
      {english ? 'ES' : 'EN'}
      <span class="vh">{english ? ': cambiar a español' : ': change to English'}</span>
    </button>
  );
}

function SoundButton() {
  const desk = useDesk();
  const on = desk.settings.value.sound;
  if (desk.openSounds === undefined) return null;
  return (
    <button type="button" class="pill sound-button" onClick={() => void desk.change({ sound: !on })}>
      <Icon name={on ? 'sound' : 'soundOff'} />
      {on ? desk.t('bar.sound.on') : desk.t('bar.sound.off')}
    </button>
  );
}
