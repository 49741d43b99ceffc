import { describe, expect, it } from 'vitest';
import type { Change } from '../../../src/harmony/model.ts';
import { whatIf } from '../../../src/harmony/remedies/what-if.ts';
import { neutralHexes } from '../../../src/harmony/thresholds.ts';
import { changeSays, whatIfNote, whatIfSays } from '../../../src/harmony/words/change-words.ts';
import { inkFromHex } from '../../../src/sheet/plain.ts';
import { needsABridge } from '../../support/hand-made.ts';

const names = { anchor: 'Regatta bunting', candidate: 'Quayside ledger' };
const navy = needsABridge.anchor.inks[0]!;
const kraft = inkFromHex('#c8a878');
const says = (change: Change) => changeSays(change, needsABridge, names);

describe('a change that is only supposed', () => {
  it('is told with the ink by its word and letter, and with what is done to it', () => {
    expect(says({ kind: 'cover', of: 'candidate', ink: 'c', with: navy })).toBe(
      'raspberry (c) is covered with navy',
    );
    expect(says({ kind: 'trim', of: 'candidate', ink: 'c' })).toBe('raspberry (c) is cut away');
    expect(says({ kind: 'trim', of: 'candidate', ink: 'c', toShare: 0.02 })).toBe(
      'raspberry (c) is cut down to 2 % of its sheet',
    );
    expect(says({ kind: 'recolour', of: 'anchor', ink: 'C', to: kraft })).toBe(
      'coral (C) is kraft (#c8a878)',
    );
    expect(says({ kind: 'add', of: 'candidate', ink: kraft, share: 0.05 })).toBe(
      'kraft lies on 5 % of Quayside ledger',
    );
    for (const [word, hex] of Object.entries(neutralHexes))
      expect(says({ kind: 'strip', ink: inkFromHex(hex) })).toBe(`a strip of ${word} lies between them`);
    expect(says({ kind: 'strip', ink: inkFromHex('#b8905c') })).toBe('a strip of kraft lies between them');
    expect(says({ kind: 'strip', ink: kraft })).toBe('a strip of kraft lies between them');
    expect(says({ kind: 'strip', ink: kraft, as: 'mat' })).toMatch(/ lies on a mat of kraft$/);
    expect(says({ kind: 'replace', of: 'candidate', side: needsABridge.anchor })).toBe(
      'Quayside ledger is turned or exchanged',
    );
  });

  it('is joined with others to one question', () => {
    expect(whatIfSays([])).toBe('What if?');
    expect(whatIfSays(['raspberry (c) is cut away'])).toBe('What if raspberry (c) is cut away?');
    expect(whatIfSays(['one', 'two', 'three'])).toBe('What if one, two, and three?');
  });

  it('is kept as a note with both verdicts and the reasons that weigh, each with figure and source', () => {
    const changes: readonly Change[] = [{ kind: 'trim', of: 'candidate', ink: 'c' }];
    const after = whatIf(needsABridge.anchor, needsABridge.candidate, changes);
    const note = whatIfNote(needsABridge, after);
    expect(note).toMatch(/^As it is, the pair needs a bridge; then it/);
    for (const { weighs, says: words, figure, source } of after.reasons) {
      expect(note.includes(`– ${words} (${figure}; ${source})`)).toBe(weighs !== 0);
    }
  });

  it('says when the verdict stays', () => {
    expect(whatIfNote(needsABridge, needsABridge)).toContain('then it still needs a bridge.');
  });
});
