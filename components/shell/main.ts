import './qw-app.ts';
import { keepOffline } from './offline.ts';

if (import.meta.env.PROD) void keepOffline();
