export declare function build(): void;
export declare function buildCommand(): void;
export declare function buildWhenNeeded(): void;
