import { keepOffline } from './page/offline.ts';
import type { QwApp } from './qw-app.ts';
import './qw-app.ts';

if (import.meta.env.PROD)
  void keepOffline((take) => document.querySelector<QwApp>('qw-app')?.newer.ready(take));
