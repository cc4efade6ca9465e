import about from '../../package.json' with { type: 'json' };

/** The version of Needlefall. */
export const VERSION: string = about.version;
