import { useEffect, useState } from 'preact/hooks';
import { CHANNEL } from './channel.ts';
import { openLives } from './lives.ts';
import { openSwitchboard, type Switchboard } from './switchboard.ts';

/** So long windows are given to say that they are there, ms, before one of them is taken for the only one. */
const ROLL_ms = 300;

/** The channel of the windows, for as long as the screen is there; null until it is open and whoever is there has said so. */
export function useSwitchboard(): Switchboard | null {
  const [board, setBoard] = useState<Switchboard | null>(null);
  useEffect(() => {
    const channel = new BroadcastChannel(CHANNEL);
    const lives = openLives();
    let gone = false;
    let opened: Switchboard | undefined;
    let timer: ReturnType<typeof setTimeout> | undefined;
    void openSwitchboard(channel, lives).then((made) => {
      if (gone) return made.close();
      opened = made;
      channel.onmessage = ({ data }) => made.hear(data);
      made.roll();
      timer = setTimeout(() => setBoard(made), ROLL_ms);
    });
    return () => {
      gone = true;
      clearTimeout(timer);
      opened?.close();
      channel.close();
      lives.letGo();
    };
  }, []);
  return board;
}
