import { expect, it, vi } from 'vitest';
import '../../components/support/qw-writing.ts';
import { drawn, heard, standAlone, within } from '../support/stand-alone.ts';

it('hands on every letter as it is written, so that nothing waits for a rest that may never come', async () => {
  const element = await standAlone('qw-writing', { label: 'Words' });
  const written = heard<{ text: string }>(element, 'qw-write');
  const area = within<HTMLTextAreaElement>(element, 'textarea');
  for (const text of ['T', 'Th', 'The']) {
    area.value = text;
    area.dispatchEvent(new Event('input'));
    expect(written.at(-1)).toEqual({ text });
  }
  await drawn(element);
  expect(written).toHaveLength(3);
  expect(area.value).toBe('The');
});

it('grows with its text where the browser does not let it grow by itself', async () => {
  const supports = vi.spyOn(CSS, 'supports').mockReturnValue(false);
  const element = await standAlone('qw-writing', { label: 'Words', value: 'One line' });
  const area = within<HTMLTextAreaElement>(element, 'textarea');
  const low = area.style.height;
  area.value = 'Line\n'.repeat(20);
  area.dispatchEvent(new Event('input'));
  await drawn(element);
  supports.mockRestore();
  expect(Number.parseFloat(area.style.height)).toBeGreaterThan(Number.parseFloat(low) + 200);
  expect(area.scrollHeight).toBeLessThanOrEqual(area.clientHeight);
});
