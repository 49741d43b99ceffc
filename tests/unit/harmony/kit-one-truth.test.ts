import { describe, expect, it } from 'vitest';
import { demoNotebook } from '../../../src/demo/notebook.ts';
import { allHeld, nameOfHeld, sideOfHeld } from '../../../src/drawer/held.ts';
import { compare } from '../../../src/harmony/compare.ts';
import { kitOf } from '../../../src/harmony/kit/kit.ts';
import type { Comparison, Kit, KitMember, ReasonKind } from '../../../src/harmony/model.ts';
import { kitLimits } from '../../../src/harmony/thresholds.ts';
import { measureNames } from '../../../src/harmony/whole/measures.ts';
import type { Side } from '../../../src/sheet/model.ts';
import { readSide } from '../../../src/sheet/read-side.ts';
import { chanceOf, chancePair, labSide } from '../../support/chance.ts';
import { kitCases, sideOfCase } from './kit-cases.ts';

/** What a kit says is held against what a study of its pairs says. Ours. */
const { drawer } = demoNotebook(readSide, 320).notebook;
const demo = allHeld(drawer).map((held) => member(nameOfHeld(drawer, held), sideOfHeld(drawer, held)!));
const chance = chanceOf(29);

/** Papers of the demo by chance, and papers of which the first two are near each other in colour. */
const kits: readonly (readonly KitMember[])[] = [
  ...kitCases.map(({ members }) => members.map((one) => member(one.name, sideOfCase(one)))),
  ...Array.from({ length: 80 }, (_, n) => {
    const left = [...demo];
    return Array.from({ length: 2 + (n % 4) }, () => left.splice(Math.floor(chance() * left.length), 1)[0]!);
  }),
  ...Array.from({ length: 120 }, (_, n) =>
    Array.from({ length: 1 + (n % 2) }, () => {
      const pair = chancePair(chance);
      return pair.of(pair.labs);
    })
      .flat()
      .map((side, at) => member(`paper ${at + 1}`, side)),
  ),
  // Three steps along the hue circle, each a repeat of the next or nearly so, the ends further apart.
  ...Array.from({ length: 72 }, (_, n) =>
    [0, 1, 2].map((step) => {
      const hue = ((30 * (n % 12) + step * (6 + Math.floor(n / 12))) * Math.PI) / 180;
      return member(
        `step ${step}`,
        labSide([{ l: 60, a: 45 * Math.cos(hue), b: 45 * Math.sin(hue) }], [0.3]),
      );
    }),
  ),
];

function member(name: string, side: Side): KitMember {
  return { name, side, role: 'paper', areaMm2: null };
}

/** A reason of a kit with its inks as a study of two members calls them: "1B" → "B", "2C" → "c". */
function asInStudy(text: string, one: number, other: number): string {
  return text
    .replaceAll(new RegExp(`\\b${one + 1}([A-Z]+)\\b`, 'g'), '$1')
    .replaceAll(new RegExp(`\\b${other + 1}([A-Z]+)\\b`, 'g'), (_, letter: string) => letter.toLowerCase());
}

const studyOf = (members: readonly KitMember[], one: number, other: number): Comparison =>
  compare(members[one]!.side, members[other]!.side, {
    names: { anchor: members[one]!.name, candidate: members[other]!.name },
  });

/** Kinds of which a kit says of two members what their study says. */
const ofPairs: readonly ReasonKind[] = [...measureNames, 'tone on tone'];

function each(check: (kit: Kit, members: readonly KitMember[]) => void): void {
  for (const members of kits) check(kitOf(members), members);
}

describe('a kit and the studies of its pairs', () => {
  it('give the same verdict and summary for every two members', () => {
    each((kit, members) => {
      for (const { one, other, verdict, summary, weightiest } of kit.pairs) {
        const study = studyOf(members, one, other);
        expect(verdict).toBe(study.verdict);
        expect(asInStudy(summary, one, other)).toBe(study.decision.summary);
        expect(asInStudy(weightiest!.says, one, other)).toBe(study.reasons[0]!.says);
      }
    });
  });

  it('agree on the verdict of two, and a kit holds where every two of its members do', () => {
    let held = 0;
    each((kit, members) => {
      const verdicts = kit.pairs.map(({ verdict }) => verdict);
      if (members.length === 2) expect(kit.verdict).toBe(verdicts[0]);
      if (verdicts.every((one) => one === 'holds-together')) {
        held += 1;
        expect(kit.verdict, JSON.stringify(kit.decision)).toBe('holds-together');
      }
    });
    expect(held).toBeGreaterThan(10);
  });

  it('use the same words, numbers and sources for what a pair says', () => {
    const compared = new Set<ReasonKind>();
    each((kit, members) => {
      for (const reason of kit.reasons.filter(({ kind }) => ofPairs.includes(kind))) {
        // Two that a third piece bridges are told of in the kit's own words, and count for nothing.
        if (reason.says.includes('lay it between them')) continue;
        const own = kit.pairs
          .flatMap(({ one, other }) =>
            studyOf(members, one, other).reasons.map((found) => ({ found, one, other })),
          )
          .find(
            ({ found, one, other }) =>
              found.kind === reason.kind &&
              JSON.stringify(found.evidence) === JSON.stringify(reason.evidence) &&
              asInStudy(reason.says, one, other).startsWith(found.says),
          );
        expect(own, reason.says).toBeDefined();
        compared.add(reason.kind);
        const { found, one, other } = own!;
        expect(reason.inks.map((id) => asInStudy(id, one, other)).sort()).toEqual([...found.inks].sort());
        const { weighs, evidence, figure, source, sourceIds } = found;
        expect(reason).toMatchObject({ weighs, evidence, figure, source, sourceIds });
      }
    });
    expect(compared.size).toBeGreaterThan(5);
  });

  it('count against a kit only what counts in a pair that does not hold', () => {
    let against = 0;
    each((kit, members) => {
      for (const { kind, says } of kit.reasons.filter(
        (one) => one.weighs < 0 && measureNames.some((name) => name === one.kind),
      )) {
        against += 1;
        const loose = kit.pairs.filter(({ verdict }) => verdict !== 'holds-together');
        const said = loose.some(({ one, other }) =>
          studyOf(members, one, other).reasons.some((found) => found.kind === kind && found.weighs < 0),
        );
        expect(said, says).toBe(true);
      }
    });
    expect(against).toBeGreaterThan(20);
  });

  it('call nothing one colour of which a study says that it nearly misses, and nothing alone that a study answers', () => {
    let [repeats, alone] = [0, 0];
    each((kit, members) => {
      const place = (id: string) => Number.parseInt(id, 10) - 1;
      for (const { inks } of kit.repeats)
        for (const [a, b] of inks.flatMap((id, n) => inks.slice(n + 1).map((to) => [id, to] as const))) {
          if (place(a) === place(b)) continue;
          repeats += 1;
          const [low, high] = place(a) < place(b) ? [a, b] : [b, a];
          const [one, other] = [place(low), place(high)];
          const link = studyOf(members, one, other).links.find(
            ({ anchorInk, candidateInk }) =>
              anchorInk === asInStudy(low, one, other) && candidateInk === asInStudy(high, one, other),
          )!;
          expect(link.kind, `${low} ${high}`).not.toBe('near miss');
        }
      for (const { inks, says } of kit.missing) {
        if (!says.startsWith('Nothing here answers')) continue;
        const own = place(inks[0]!);
        for (const other of members.keys()) {
          if (other === own) continue;
          alone += 1;
          const [one, to] = own < other ? [own, other] : [other, own];
          const id = asInStudy(inks[0]!, one, to);
          for (const { kind, anchorInk, candidateInk } of studyOf(members, one, to).links)
            if ((own < other ? anchorInk : candidateInk) === id) expect(kind, says).toBe('unrelated');
        }
      }
    });
    expect(repeats).toBeGreaterThan(50);
    expect(alone).toBeGreaterThan(20);
  });

  it('say how many papers are judged where there are more than a page can hold', () => {
    const many = Array.from({ length: kitLimits.papers + 5 }, (_, n) => ({
      ...demo[n % demo.length]!,
      name: `paper ${n}`,
    }));
    const kit = kitOf(many);
    expect(kit.members).toHaveLength(many.length);
    expect(kit.pairs).toHaveLength((kitLimits.papers * (kitLimits.papers - 1)) / 2);
    expect(kit.missing[0]!.says).toContain('the first 40 are judged here, and 5 are left out');
    expect(
      kitOf(many.slice(0, kitLimits.papers))
        .missing.map(({ says }) => says)
        .join(),
    ).not.toContain('left out');
  });
});
