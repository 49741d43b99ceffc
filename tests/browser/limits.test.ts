import { describe, expect, it } from 'vitest';
import '../../components/kit/qw-kit-size.ts';
import '../../components/picture/qw-size.ts';
import '../../components/picture/qw-weight.ts';
import '../../components/picture/qw-typed-colour.ts';
import '../../components/support/qw-title.ts';
import { colourOfText } from '../../components/shell/open/known-colours.ts';
import { drawn, heard, standAlone, within } from '../support/stand-alone.ts';

function type(field: HTMLInputElement, value: string, event = 'change'): void {
  field.value = value;
  field.dispatchEvent(new Event(event, { bubbles: true }));
}
const alertOf = (element: HTMLElement) =>
  element.shadowRoot?.querySelector('[role="alert"]')?.textContent?.trim() ?? null;

describe('what is typed past what can be kept', () => {
  it('a sheet weighed at 1,000 g is not taken, and it is said how heavy one of that size can be', async () => {
    const element = await standAlone('qw-weight', {
      weight: { gsm: 200, weighed: true },
      sizeMm: { width: 305, height: 305 },
    });
    const told = heard(element, 'qw-weight');
    const field = within<HTMLInputElement>(element, 'input');
    type(field, '1000');
    await drawn(element);
    expect(told).toEqual([]);
    expect(alertOf(element)).toBe(
      'A sheet of that size can be from 0.01 to 930 g. What stood there before stays.',
    );
    type(field, '19');
    await drawn(element);
    expect(told).toEqual([{ given: { by: 'scales', grams: 19 } }]);
    expect(alertOf(element)).toBeNull();
  });

  it('pounds that would be more grams than are kept are not taken in any grade', async () => {
    const element = await standAlone('qw-weight', { weight: { gsm: 216, lb: 80, grade: 'bond' } });
    const told = heard(element, 'qw-weight');
    type(within<HTMLInputElement>(element, 'input'), '9000');
    await drawn(element);
    expect(told).toEqual([]);
    expect(alertOf(element)).toMatch(/from 1 to 2,600 lb/);
  });

  it('a piece 12,000 in wide is not taken', async () => {
    const element = await standAlone('qw-kit-size', {
      sizeMm: { width: 76.2, height: 101.6 },
      label: 'Kraft',
    });
    const told = heard(element, 'qw-kit-size');
    const field = within<HTMLInputElement>(element, 'input');
    type(field, '12000');
    await drawn(element);
    expect(told).toEqual([]);
    expect(field.value).toBe('3');
    expect(alertOf(element)).toBe('A width can be from 0.04 to 197 in. What stood there before stays.');
    type(within<HTMLInputElement>(element, 'input[max]'), '1000');
    await drawn(element);
    expect(told).toEqual([]);
    expect(alertOf(element)).toMatch(/number of pieces can be from 1 to 60/);
  });

  it('a sheet larger than a room is not taken', async () => {
    const element = await standAlone('qw-size', { sizeMm: { width: 123, height: 234 } });
    const told = heard(element, 'qw-size');
    type(within<HTMLInputElement>(element, 'input'), '12000');
    await drawn(element);
    expect(told).toEqual([]);
    expect(alertOf(element)).toMatch(/^A width can be from 0.2 to 197 in/);
  });

  it('a colour that there is not is told from a text that is none', async () => {
    const element = await standAlone('qw-typed-colour', { colourOf: colourOfText });
    const field = within<HTMLInputElement>(element, '#text');
    type(field, '5PB 4/100', 'input');
    field.dispatchEvent(new Event('blur'));
    await drawn(element);
    expect(within(element, '#says').textContent).toMatch(/No paper and no ink is that strong/);
  });

  it('a title of more than 300 letters stays on the page to be shortened, and is not kept', async () => {
    const element = await standAlone('qw-title', { value: 'Short' });
    const told = heard(element, 'qw-retitle');
    const words = within(element, 'span');
    words.textContent = 'x'.repeat(301);
    words.dispatchEvent(new Event('blur'));
    await drawn(element);
    expect(told).toEqual([]);
    expect(words.textContent).toHaveLength(301);
    expect(alertOf(element)).toBe('A title can be up to 300 letters. What stood there before stays.');
  });
});
