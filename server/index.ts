// The face of the server for the command line.
export * from './refusal.ts';
export * from './start-server.ts';
