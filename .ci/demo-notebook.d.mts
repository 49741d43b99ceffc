import type { Plugin } from 'vite';

export function demoNotebook(): Plugin;
