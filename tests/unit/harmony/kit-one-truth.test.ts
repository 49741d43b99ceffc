import { describe, expect, it } from 'vitest';
import { demoNotebook } from '../../../src/demo/notebook.ts';
import { allHeld, nameOfHeld, sideOfHeld } from '../../../src/drawer/find.ts';
import { compare } from '../../../src/harmony/compare.ts';
import { kitOf } from '../../../src/harmony/kit/kit.ts';
import type { Comparison, Kit, KitMember, Reason, ReasonKind } from '../../../src/harmony/model.ts';
import { kitLimits } from '../../../src/harmony/thresholds.ts';
import type { Side } from '../../../src/sheet/model.ts';
import { readSide } from '../../../src/sheet/read-side.ts';
import { chanceOf, chancePair, labSide } from '../../support/chance.ts';
import { handSide } from '../../support/sides.ts';
import { kitCases } from './kit-cases.ts';

/** What a kit says is held against what a study of its pairs says. Ours. */
const { drawer } = demoNotebook(readSide, 320).notebook;
const demo = allHeld(drawer).map((held) => member(nameOfHeld(drawer, held), sideOfHeld(drawer, held)!));
const chance = chanceOf(29);

/** Papers of the demo by chance, and papers of which the first two are near each other in colour. */
const kits: readonly (readonly KitMember[])[] = [
  ...kitCases.map(({ members }) => members.map(({ name, side }) => member(name, handSide(side)))),
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

const placesOf = ({ inks }: Reason) => [...new Set(inks.map((id) => Number.parseInt(id, 10) - 1))];
const pairsOf = (places: readonly number[]) =>
  places.flatMap((one, n) => places.slice(n + 1).map((other) => [one, other] as const));
const studyOf = (members: readonly KitMember[], one: number, other: number): Comparison =>
  compare(members[one]!.side, members[other]!.side, {
    names: { anchor: members[one]!.name, candidate: members[other]!.name },
  });

/** Kinds of which a kit says of two members what their study says. */
const ofPairs: readonly ReasonKind[] = [
  'near miss',
  'base quarrel',
  'base agreement',
  'bright against muted',
  'print scale',
  'busyness',
  'warm and cool',
  'weight',
  'light unknown',
];

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

  it('use the same words, numbers and sources where a kit has two members', () => {
    let compared = 0;
    each((kit, members) => {
      if (members.length !== 2) return;
      const study = studyOf(members, 0, 1);
      for (const reason of kit.reasons.filter(({ kind }) => ofPairs.includes(kind) || kind === 'stray')) {
        const says = asInStudy(reason.says, 0, 1);
        const own = study.reasons.find((one) => one.kind === reason.kind && one.says === says)!;
        expect(own, says).toBeDefined();
        compared += 1;
        expect(reason.inks.map((id) => asInStudy(id, 0, 1)).sort()).toEqual([...own.inks].sort());
        const { weighs, evidence, figure, source, sourceIds } = reason;
        expect({ weighs, evidence, figure, source, sourceIds }).toEqual({
          weighs: own.weighs,
          evidence: own.evidence,
          figure: own.figure,
          source: own.source,
          sourceIds: own.sourceIds,
        });
      }
    });
    expect(compared).toBeGreaterThan(100);
  });

  it('never speak in different directions of the same finding', () => {
    const seen = new Set<ReasonKind>();
    each((kit, members) => {
      for (const reason of kit.reasons.filter(({ kind }) => ofPairs.includes(kind))) {
        const pairs = pairsOf(placesOf(reason));
        const ways = pairs.flatMap(([one, other]) =>
          studyOf(members, one, other)
            .reasons.filter(({ kind }) => kind === reason.kind)
            .filter(({ inks }) => reason.kind !== 'near miss' || isOf(reason, inks, one, other))
            .map(({ weighs }) => Math.sign(weighs)),
        );
        if (pairs.length === 0) continue;
        seen.add(reason.kind);
        // Two that lean warm and one that leans cool are told in one sentence, which speaks for none of them alone.
        const told =
          reason.kind === 'warm and cool' && reason.weighs < 0 ? ways.filter((way) => way < 0) : ways;
        expect(told.length, reason.says).toBeGreaterThan(0);
        for (const way of told) expect(way, reason.says).toBe(Math.sign(reason.weighs));
      }
    });
    expect([...seen].sort()).toEqual(
      expect.arrayContaining(['base quarrel', 'busyness', 'near miss', 'print scale']),
    );
  });

  it('call nothing one colour of which a study says that it nearly misses, and nothing alone that a study answers', () => {
    let [repeats, strays] = [0, 0];
    each((kit, members) => {
      const link = (a: string, b: string) => {
        const [one, other] = [a, b].map((id) => Number.parseInt(id, 10) - 1) as [number, number];
        return studyOf(members, one, other).links.find(
          ({ anchorInk, candidateInk }) =>
            anchorInk === asInStudy(a, one, other) && candidateInk === asInStudy(b, one, other),
        )!;
      };
      for (const { inks } of kit.repeats)
        for (const [a, b] of inks.flatMap((id, n) => inks.slice(n + 1).map((to) => [id, to] as const)))
          if (Number.parseInt(a, 10) !== Number.parseInt(b, 10)) {
            repeats += 1;
            const [low, high] = Number.parseInt(a, 10) < Number.parseInt(b, 10) ? [a, b] : [b, a];
            expect(link(low, high).kind, `${low} ${high}`).not.toBe('near miss');
          }
      for (const { inks } of kit.reasons.filter(({ kind }) => kind === 'stray')) {
        const own = Number.parseInt(inks[0]!, 10) - 1;
        if (inks.length > 1) continue;
        strays += 1;
        for (const other of members.keys()) {
          if (other === own) continue;
          const [one, to] = own < other ? [own, other] : [other, own];
          const id = asInStudy(inks[0]!, one, to);
          for (const { kind, anchorInk, candidateInk } of studyOf(members, one, to).links)
            if ((own < other ? anchorInk : candidateInk) === id)
              expect(['near miss', 'unrelated']).toContain(kind);
        }
      }
    });
    expect(repeats).toBeGreaterThan(50);
    expect(strays).toBeGreaterThan(20);
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

/** Whether a near miss of a study is the one that the kit speaks of. */
function isOf(reason: Reason, inks: readonly string[], one: number, other: number): boolean {
  return (
    [...inks].sort().join() ===
    reason.inks
      .map((id) => asInStudy(id, one, other))
      .sort()
      .join()
  );
}
