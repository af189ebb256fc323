/** A random id that knows what it names, so that a spot's id cannot be passed where a drill's is wanted. */
export type Id<Kind extends string> = string & { readonly __names: Kind };

export type SpotId = Id<'spot'>;
export type ActId = Id<'act'>;
