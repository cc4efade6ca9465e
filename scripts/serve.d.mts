export declare function serve(folder: string, firstPort?: number): Promise<{ readonly address: string; readonly close: () => Promise<void> }>;
