import type { StateHolder } from '../state-holder.ts';

/** Tells, once for each notebook that is opened, that things in it could not be read, and where they are. */
export function tellOfSetAside(holder: StateHolder): void {
  let told = holder.state.setAside;
  holder.subscribe(({ setAside }) => {
    if (setAside === told) return;
    told = setAside;
    if (setAside.length > 0) holder.say('trouble', setAsideWords(setAside.length));
  });
}

function setAsideWords(count: number): string {
  return count === 1
    ? 'One thing in this notebook could not be read. It is kept as it is, and the rest is open. You can save it as a file, beside the list of leaves.'
    : `${count.toLocaleString('en')} things in this notebook could not be read. They are kept as they are, and the rest is open. You can save them as a file, beside the list of leaves.`;
}
