import { demoNotebook } from '../../../src/demo/notebook.ts';
import { pairNames, sideOfHeld } from '../../../src/drawer/held.ts';
import { filterChoices, matchesInDrawer } from '../../../src/drawer/look-through.ts';
import { compare } from '../../../src/harmony/compare.ts';
import type { Change } from '../../../src/harmony/model.ts';
import type { ExerciseLeaf, KitLeaf, StudyLeaf } from '../../../src/notebook/model.ts';
import { asks, mark, questions } from '../../../src/notebook/words/exercise.ts';
import { readSide } from '../../../src/sheet/read-side.ts';
import { relabel } from '../../../src/sheet/relabel.ts';
import { colourablesIn, findColourIt } from '../../../src/workbench/colour-it.ts';
import { findKit } from '../../../src/workbench/kit.ts';
import { supposedInk, supposeOn } from '../../../src/workbench/what-if.ts';
import { noFilter } from '../../drawer/find-view.ts';
import '../../drawer/qw-find.ts';
import '../../lesson/qw-differences.ts';
import '../../notebook/qw-exercise-leaf.ts';
import '../../notebook/qw-kit-leaf.ts';
import '../../study/qw-colour-it.ts';
import '../../study/tried/qw-what-if.ts';

/** Kits, exercises and ways to look further, each alone with nothing but its properties: papers of the demo. */
const { notebook } = demoNotebook(readSide, 300);
const { drawer } = notebook;
const study = notebook.leaves.find(
  (leaf): leaf is StudyLeaf => leaf.kind === 'study' && leaf.id === 'bough-and-hearts',
)!;
const [anchor, candidate] = [study.anchor!, study.candidates[0]!];
const sides = [sideOfHeld(drawer, anchor)!, sideOfHeld(drawer, candidate)!] as const;
const names = pairNames(drawer, anchor, candidate);
const comparison = compare(sides[0], sides[1], { names });
const paper = (name: string) => ({ key: name, name, about: 'sheet', picture: null, bands: [] });

const changes: readonly Change[] = [{ kind: 'trim', of: 'candidate', ink: 'b' }];
const supposed = supposeOn(drawer, { anchor, candidate }, comparison, changes);
place('qw-what-if', {
  inkOf: supposedInk,
  view: {
    from: comparison,
    names,
    plains: drawer.plains.map(({ id, name, ink }) => ({ id, name, ink, neutral: true })),
    changes,
    clauses: supposed.clauses,
    after: supposed.comparison.verdict,
    steps: 1,
  },
});

const found = matchesInDrawer(drawer, study, { by: 'anchor' }, {}, 5);
place('qw-find', {
  view: {
    by: 'anchor',
    anchorName: names.anchor,
    candidateName: names.candidate,
    inks: comparison.anchor.inks,
    ink: 'B',
    filter: noFilter,
    choices: filterChoices(drawer),
    state: 'found',
    places: found.places.map(({ held, verdict, says, of }) => ({
      paper: paper(held.id),
      verdict,
      toCandidate: null,
      says,
      of,
      held: false,
    })),
    all: found.all,
  },
});

const things = colourablesIn(drawer);
place('qw-colour-it', {
  view: {
    names,
    comparison,
    found: findColourIt(drawer, comparison, things[0]!),
    things,
    thing: things[0]!.id,
  },
});

const kit: KitLeaf = {
  id: 'kit',
  kind: 'kit',
  title: 'A page for the apple day',
  text: '',
  pieces: [anchor, candidate, study.candidates[1]!].map((held) => ({ held, areaMm2: null })),
};
const judged = findKit(drawer, kit);
place('qw-kit-leaf', {
  leaf: kit,
  view: {
    pieces: judged.there.map(({ index }) => ({
      index,
      paper: paper(judged.kit!.members[index]!.name),
      isPhoto: false,
      canBePhoto: true,
      sizeMm: null,
      count: 1,
      mat: null,
    })),
    kit: judged.kit,
    cuts: judged.cuts,
    mats: [],
  },
});

const exercise: ExerciseLeaf = {
  id: 'exercise',
  kind: 'exercise',
  title: questions['near miss'].title,
  text: '',
  studyId: study.id,
  answered: null,
  ask: 'near miss',
};
const shown = (of: 'anchor' | 'candidate', at: 0 | 1) => ({
  held: at === 0 ? anchor : candidate,
  name: names[of],
  side: relabel(sides[at], of),
  picture: null,
  places: null,
  facts: [],
  turnsTo: null,
});
for (const pointed of [null, ['B', 'b']]) {
  const leaf = pointed ? { ...exercise, pointed } : exercise;
  place('qw-exercise-leaf', {
    leaf,
    view: {
      leaf,
      ask: 'near miss',
      asks: questions['near miss'].asks,
      questions: asks.map((ask) => ({ ask, title: questions[ask].title })),
      pairs: [{ key: 'pair', name: `${names.anchor} and ${names.candidate}`, on: true }],
      anchor: shown('anchor', 0),
      candidate: shown('candidate', 1),
      comparison,
      answered: null,
      pointed,
      marked: mark(leaf, comparison),
    },
  });
}

place('qw-differences', {
  said: 3,
  agreed: 2,
  patterns: ['You seem to like near misses of red: 2 times you found more together than the reading did.'],
  differ: [
    {
      studyId: study.id,
      pair: `${names.anchor} and ${names.candidate}`,
      hers: 'holds-together',
      likes: true,
      comparison,
      reason: comparison.reasons[0] ?? null,
    },
  ],
});

function place(tag: string, properties: Record<string, unknown>): void {
  const heading = document.createElement('h2');
  heading.textContent = tag;
  const box = document.createElement('section');
  box.style.cssText = 'max-width:1000px;margin:0 auto 40px;padding:16px;background:var(--qw-leaf)';
  box.append(heading, Object.assign(document.createElement(tag), properties));
  document.getElementById('alone')?.append(box);
}
