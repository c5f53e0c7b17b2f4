const LATEST_SETS: Readonly<Record<string, number>> = {
  ExcelApi: 8, // of 1.x: what the adapter covers of it; pictures on a sheet came with 1.9
  SharedRuntime: 1,
  CustomFunctionsRuntime: 3,
};

const INFO = { host: "Excel", platform: "OfficeOnline" } as const;

/** As much of Office's common part as the pane uses. */
export function office(language: string) {
  return {
    onReady: async (callback?: (info: typeof INFO) => unknown) => {
      await Promise.resolve();
      await callback?.(INFO);
      return INFO;
    },
    HostType: { Excel: "Excel" },
    PlatformType: { OfficeOnline: "OfficeOnline" },
    context: {
      displayLanguage: language,
      contentLanguage: language,
      host: INFO.host,
      platform: INFO.platform,
      requirements: {
        isSetSupported: (name: string, version = "1.1"): boolean => {
          const [major, minor = 0] = version.split(".").map(Number);
          return major === 1 && minor <= (LATEST_SETS[name] ?? 0);
        },
      },
    },
  };
}
