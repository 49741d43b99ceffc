import { html, nothing, type ReactiveController, type ReactiveControllerHost } from 'lit';

/** From where to where a number may go, and what it counts: "in", "g/m²". */
export interface Span {
  readonly what: string;
  readonly least: number;
  readonly most: number;
  readonly unit?: string;
}

/** Slips of the pen in a number that is typed: what lies outside is not taken, and a sentence says how far it may go. */
export class Slip implements ReactiveController {
  private says = '';
  private readonly host: ReactiveControllerHost;

  constructor(host: ReactiveControllerHost) {
    this.host = host;
    host.addController(this);
  }

  hostConnected(): void {}

  /** True where the number can be taken; else it has been said why not, and the old one is shown again. */
  takes(value: number, span: Span): boolean {
    const is = value >= span.least && value <= span.most;
    this.says = is ? '' : sentence(span);
    this.host.requestUpdate();
    return is;
  }

  /** The sentence, beside the fields. */
  render() {
    return this.says
      ? html`<p role="alert" style="flex-basis:100%;margin:4px 0 0;font:13px/1.4 var(--qw-sans)">${this.says}</p>`
      : nothing;
  }
}

function sentence({ what, least, most, unit }: Span): string {
  const upTo = `${tidy(most)}${unit ? ` ${unit}` : ''}`;
  const from = least === 0 ? 'up to' : `from ${tidy(least)} to`;
  return `${what} can be ${from} ${upTo}. What stood there before stays.`;
}

function tidy(value: number): string {
  return Number(value.toPrecision(3)).toLocaleString('en', { maximumFractionDigits: 2 });
}
