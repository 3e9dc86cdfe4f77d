import { useEffect, useState } from 'preact/hooks';
import { CHANNEL } from './channel.ts';
import { openLives } from './lives.ts';
import { openSwitchboard, type Switchboard } from './switchboard.ts';

/** The channel of the windows, for as long as the screen is there; null until it is open. */
export function useSwitchboard(): Switchboard | null {
  const [board, setBoard] = useState<Switchboard | null>(null);
  useEffect(() => {
    const channel = new BroadcastChannel(CHANNEL);
    const lives = openLives();
    let gone = false;
    let opened: Switchboard | undefined;
    void openSwitchboard(channel, lives).then((made) => {
      if (gone) return made.close();
      opened = made;
      channel.onmessage = ({ data }) => made.hear(data);
      made.roll();
      setBoard(made);
    });
    return () => {
      gone = true;
      opened?.close();
      channel.close();
      lives.letGo();
    };
  }, []);
  return board;
}
