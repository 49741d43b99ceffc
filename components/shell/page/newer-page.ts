import type { ReactiveController } from 'lit';
import type { Told } from '../../notebook/qw-messages.ts';
import type { AppHost } from '../app-host.ts';
import type { TakeNewerPage } from './offline.ts';

/** A newer page that lies ready: told once, never forced. What is written is stored before it is taken. */
export class NewerPage implements ReactiveController {
  /** What to tell; none where there is nothing newer, or where it was put away. */
  messages: readonly Told[] = [];
  private take: TakeNewerPage | null = null;
  private readonly app: AppHost;

  constructor(app: AppHost) {
    this.app = app;
    app.addController(this);
  }

  hostConnected(): void {
    this.app.addEventListener('qw-reload', this.onReload);
    this.app.addEventListener('qw-dismiss', this.onDismiss);
  }

  hostDisconnected(): void {
    this.app.removeEventListener('qw-reload', this.onReload);
    this.app.removeEventListener('qw-dismiss', this.onDismiss);
  }

  ready(take: TakeNewerPage): void {
    this.take = take;
    this.tell([told]);
  }

  private tell(messages: readonly Told[]): void {
    this.messages = messages;
    this.app.requestUpdate();
  }

  private readonly onReload = async (): Promise<void> => {
    await this.app.session?.saveNow();
    this.take?.();
  };

  private readonly onDismiss = (event: Event): void => {
    if ((event as CustomEvent<{ id: string }>).detail.id === told.id) this.tell([]);
  };
}

const told: Told = {
  id: 'newer',
  kind: 'note',
  says: 'A newer Quirewise is ready: reload when it suits you.',
  offers: 'reload',
};
