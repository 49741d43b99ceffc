import { describe, expect, it } from 'vitest';
import { type FindView, noFilter } from '../../components/drawer/find-view.ts';
import '../../components/drawer/qw-find.ts';
import { bunting, ledger, needsABridge } from '../support/hand-made.ts';
import { axeTroubles, drawn, heard, standAlone, within } from '../support/stand-alone.ts';

const paper = { key: 'sheet:l:A', name: 'Quayside ledger', about: 'sheet', picture: null, bands: [] };
const place = {
  paper,
  verdict: 'needs-a-bridge',
  toCandidate: null,
  says: 'Coral (C) and raspberry (c) are what the eye trips over.',
  of: needsABridge,
  held: false,
} as const;
const view: FindView = {
  by: 'anchor',
  anchorName: 'Regatta bunting',
  candidateName: 'Pebble dot',
  inks: [...bunting.inks, ...ledger.inks],
  ink: 'B',
  filter: noFilter,
  choices: { bases: ['cream', 'kraft'], scales: ['small'], motifs: ['dot'], mostCount: 3 },
  places: [place, { ...place, paper: { ...paper, key: 'p', name: 'Dahlia' }, held: true }],
  all: 30,
  state: 'found',
};

describe('the drawer looked through', () => {
  it.each(['anchor', 'ink', 'bridge'] as const)('has nothing that axe finds, by %s', async (by) => {
    await standAlone('qw-find', { view: { ...view, by } }, by === 'ink' ? 'dark' : 'light');
    expect(await axeTroubles()).toEqual([]);
  });

  it('gives every place its verdict, one line with its inks as chips, and a way to hold it', async () => {
    const element = await standAlone('qw-find', { view });
    const [first, second] = element.shadowRoot!.querySelectorAll('ol > li');
    expect(first!.textContent).toMatch(/1 Quayside ledger.*needs a bridge.*what the eye trips over/s);
    expect([...first!.querySelectorAll('.chip')].map((chip) => chip.textContent)).toEqual(['C', 'c']);
    expect(second!.textContent).toContain('on this study');
    const taken = heard(element, 'qw-take');
    first!.querySelector('button')!.click();
    expect(taken).toEqual([{ key: 'sheet:l:A', as: 'candidate' }]);
  });

  it('tells of a bridge how it holds with either paper', async () => {
    const bridge = { ...place, verdict: 'holds-together', toCandidate: 'needs-a-bridge' } as const;
    const element = await standAlone('qw-find', { view: { ...view, by: 'bridge', places: [bridge] } });
    expect(within(element, 'ol > li').textContent).toMatch(
      /Regatta bunting: holds together.*Pebble dot: needs a bridge/s,
    );
  });

  it('passes on what is looked for, and every condition with the rest', async () => {
    const element = await standAlone('qw-find', { view: { ...view, by: 'ink' } });
    const [by, ink, filters, more] = (
      ['qw-find-by', 'qw-find-ink', 'qw-find-filter', 'qw-find-more'] as const
    ).map((name) => heard(element, name));
    within<HTMLInputElement>(element, 'qw-choice', 'input[value="bridge"]').click();
    within<HTMLInputElement>(element, 'qw-pick-ink', 'input[value="c"]').click();
    const [what, base, , , count] = element.shadowRoot!.querySelectorAll('select');
    for (const [select, value] of [
      [what!, 'plain'],
      [base!, 'kraft'],
      [count!, '2'],
    ] as const) {
      select.value = value;
      select.dispatchEvent(new Event('change'));
    }
    within(element, '.text > button').click();
    expect([by, ink, more]).toEqual([[{ value: 'bridge' }], [{ value: 'c' }], [{}]]);
    expect(filters).toEqual([
      { filter: { ...noFilter, kind: 'plain' } },
      { filter: { ...noFilter, base: 'kraft' } },
      { filter: { ...noFilter, count: 2 } },
    ]);
  });

  it('says that it is looking, and where it could not look, and counts nothing meanwhile', async () => {
    for (const [state, says] of [
      ['looking', 'Looking through the drawer…'],
      ['stopped', 'The drawer could not be looked through.'],
    ] as const) {
      const element = await standAlone('qw-find', { view: { ...view, places: [], all: 0, state } });
      expect(within(element, '.none').textContent).toContain(says);
      expect(within(element, 'section').textContent).not.toMatch(/papers? fits?/);
      expect(await axeTroubles()).toEqual([]);
    }
  });

  it('says so where nothing fits', async () => {
    const element = await standAlone('qw-find', { view: { ...view, by: 'ink', places: [], all: 0 } });
    await drawn(element);
    expect(within(element, '.none').textContent).toContain('Nothing in the drawer repeats this ink');
  });
});
