import { defineConfig, mergeConfig } from "vitest/config";
import base from "./vitest.config.ts";

export default mergeConfig(base, defineConfig({ test: { include: ["tests/**/*.long.test.ts"], exclude: [], testTimeout: 3_600_000 } }));
