import { expect, it } from 'vitest';
import '../../components/support/qw-writing.ts';
import { drawn, heard, standAlone, within } from '../support/stand-alone.ts';

it.each(['pagehide', 'visibilitychange'] as const)(
  'what was written is handed on at once when the page is left (%s), before those who keep it hear of it',
  async (name) => {
    const element = await standAlone('qw-writing', { label: 'Words' });
    const order: string[] = [];
    const written = heard<{ text: string }>(element, 'qw-write');
    element.addEventListener('qw-write', () => order.push('written'));
    const target = name === 'pagehide' ? window : document;
    const keep = () => order.push('kept');
    target.addEventListener(name, keep);
    const area = within<HTMLTextAreaElement>(element, 'textarea');
    area.value = 'The last words';
    area.dispatchEvent(new Event('input'));
    expect(written).toEqual([]);
    target.dispatchEvent(new Event(name, { bubbles: name === 'visibilitychange' }));
    target.removeEventListener(name, keep);
    await drawn(element);
    expect(written).toEqual([{ text: 'The last words' }]);
    expect(order).toEqual(['written', 'kept']);
  },
);
