import { describe, expect, it } from 'vitest';
import { orderOf } from '../../src/cli/arguments.ts';
import { nameOf } from '../../src/cli/board-file.ts';
import { Refusal } from '../../src/cli/refusal.ts';

const pair = ['--anchor', 'a.png', '--candidate', 'b.jpg'];

describe('what the terminal is asked for', () => {
  it('gives each width, crop and card to the picture before it', () => {
    const order = orderOf([
      ...['--anchor', 'a.png', '--width-mm', '152.5', '--candidate', 'b.jpg', '--crop', '10,20,300,400'],
      ...['--candidate', 'c.tif', '--card', '1,2,30,40,0.18', '--width-mm', '200'],
    ]);
    expect(order).toEqual({
      anchor: { file: 'a.png', widthMm: 152.5 },
      candidates: [
        { file: 'b.jpg', crop: { x: 10, y: 20, width: 300, height: 400 } },
        { file: 'c.tif', card: { x: 1, y: 2, width: 30, height: 40, reflectance: 0.18 }, widthMm: 200 },
      ],
      distance: 'apart',
      json: false,
      version: 2,
      board: null,
    });
  });

  it('takes the other options in any order, and any path as a file', () => {
    const order = orderOf(['--json', '--distance', 'touching', '--board', 'out/B.SVG', ...pair]);
    expect(order).toMatchObject({
      json: true,
      version: 2,
      distance: 'touching',
      board: { file: 'out/B.SVG', kind: 'svg' },
    });
    expect(orderOf(['--anchor', '-odd name.png', '--candidate', 'b'])).toMatchObject({
      anchor: { file: '-odd name.png' },
    });
  });

  it('takes a value after an equals sign as well', () => {
    expect(orderOf(['--anchor=a.png', '--width-mm=200', '--candidate=--json', '--json'])).toMatchObject({
      anchor: { file: 'a.png', widthMm: 200 },
      candidates: [{ file: '--json' }],
      json: true,
    });
  });

  it('gives help when asked, whatever else is said', () => {
    expect(orderOf(['--help'])).toBe('help');
    expect(orderOf([...pair, '-h'])).toBe('help');
  });

  it.each([
    ['no anchor', ['--candidate', 'b.jpg'], /--anchor/],
    ['no candidate', ['--anchor', 'a.png'], /--candidate/],
    ['nothing at all', [], /--anchor/],
    ['two anchors', [...pair, '--anchor', 'c.png'], /twice/],
    ['an unknown option', [...pair, '--colour'], /"--colour"/],
    ['several letters after one dash', [...pair, '-colour'], /"-colour"/],
    ['an unknown option with a value', [...pair, '--colour=red'], /"--colour=red"/],
    ['the name of what every object has', [...pair, '--constructor'], /"--constructor"/],
    ['two dashes alone', [...pair, '--', 'c.png'], /"--"/],
    ['a value where none belongs', [...pair, '--json=yes'], /--json takes no value/],
    ['nothing after an equals sign', ['--anchor=', ...pair], /--anchor needs a value/],
    ['a bare word', [...pair, 'c.png'], /"c\.png"/],
    ['an option without its value', ['--candidate', 'b.jpg', '--anchor'], /--anchor needs a value/],
    ['an option where a value belongs', ['--anchor', '--json'], /--anchor needs a value/],
    ['a width of nothing', [...pair, '--width-mm', '0'], /--width-mm/],
    ['a width that is no number', [...pair, '--width-mm', '12in'], /"12in"/],
    ['a width before any picture', ['--width-mm', '305', ...pair], /belongs to the picture before it/],
    ['an infinite width', [...pair, '--width-mm', 'Infinity'], /--width-mm/],
    ['a crop of three numbers', [...pair, '--crop', '1,2,3'], /--crop/],
    ['a crop of nothing', [...pair, '--crop', '0,0,0,5'], /--crop/],
    ['a crop with a hole', [...pair, '--crop', '1,,3,4'], /--crop/],
    ['a card with six numbers', [...pair, '--card', '1,2,3,4,0.9,1'], /--card/],
    ['a card that reflects too much', [...pair, '--card', '1,2,3,4,1.2'], /reflectance/],
    ['a distance that is none', [...pair, '--distance', 'near'], /"near"/],
    ['a board of a kind that is not made', [...pair, '--board', 'b.gif'], /"b\.gif"/],
  ])('refuses %s in one sentence', (_, args, says) => {
    expect(() => orderOf(args)).toThrow(Refusal);
    expect(() => orderOf(args)).toThrow(says);
    expect(() => orderOf(args)).toThrow(/^[^\n]+\.$|^[^\n]+more\.$/);
  });

  it('makes a paper’s name of a file’s', () => {
    expect(nameOf('/tmp/old_bunting-2.jpg')).toBe('Old bunting 2');
    expect(nameOf('.png')).toBe('.png');
  });
});
