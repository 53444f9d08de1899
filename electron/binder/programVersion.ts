import project from '../../package.json' with { type: 'json' };

/** Version of the program, which the binder names. */
export const programVersion: string = project.version;
