import { describe, expect, it } from 'vitest';
import { heldKey } from '../../../src/drawer/held.ts';
import type { Comparison, Verdict } from '../../../src/harmony/model.ts';
import type { Notebook, Opinion } from '../../../src/notebook/model.ts';
import { findDifferences } from '../../../src/notebook/words/differences.ts';
import { needsABridge } from '../../support/hand-made.ts';
import { dots, kraft, ledger, sampleNotebook } from './sample-notebook.ts';

/** The sample's study with what she says of its three candidates. */
function saying(...said: (Partial<Opinion> | null)[]): Notebook {
  const notebook = sampleNotebook();
  const opinions = Object.fromEntries(
    [ledger, dots, kraft].flatMap((held, at) =>
      said[at] ? [[heldKey(held), { verdict: null, likes: null, ...said[at] }]] : [],
    ),
  );
  return {
    ...notebook,
    leaves: notebook.leaves.map((leaf) => (leaf.kind === 'study' ? { ...leaf, opinions } : leaf)),
  };
}

const always = (verdict: Verdict) => (): Comparison => ({ ...needsABridge, verdict });

describe('the page of differences', () => {
  it('counts only pairs of which she has said her verdict', () => {
    const found = findDifferences(
      saying({ verdict: 'needs-a-bridge' }, { likes: true }),
      always('needs-a-bridge'),
    );
    expect(found).toEqual({ said: 1, agreed: 1, differ: [], patterns: [] });
  });

  it('shows beside a milder verdict the weightiest reason against, beside a sterner one the weightiest for', () => {
    const { differ } = findDifferences(
      saying({ verdict: 'holds-together' }, { verdict: 'pulls-apart' }),
      always('needs-a-bridge'),
    );
    expect(differ.map(({ reason }) => reason?.kind)).toEqual(['near miss', 'repeat']);
  });

  it('tells a habit once it has returned, by its kind and its hue', () => {
    const once = findDifferences(saying({ verdict: 'holds-together' }), always('needs-a-bridge'));
    expect(once.patterns).toEqual([]);
    const twice = findDifferences(
      saying({ verdict: 'holds-together' }, { verdict: 'holds-together' }),
      always('needs-a-bridge'),
    );
    expect(twice.patterns).toEqual([
      'You seem to like near misses of red: 2 times you found more together than Quirewise did.',
    ]);
  });

  it('tells when she is sterner, and keeps liking apart from belonging', () => {
    const stern = findDifferences(
      saying({ verdict: 'pulls-apart' }, { verdict: 'pulls-apart' }),
      always('holds-together'),
    );
    expect(stern.patterns[0]).toMatch(/^2 times you were sterner/);
    const liked = findDifferences(
      saying({ verdict: 'pulls-apart', likes: true }, { verdict: 'pulls-apart', likes: true }),
      always('pulls-apart'),
    );
    expect(liked.differ).toEqual([]);
    expect(liked.patterns).toEqual([expect.stringContaining('another question')]);
  });

  it('leaves out papers that have left the drawer', () => {
    expect(findDifferences(saying({ verdict: 'pulls-apart' }), () => null).said).toBe(0);
  });
});
