export { ownTurn } from '../../src/storage/own-turn.ts';
