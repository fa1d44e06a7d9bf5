import { defineConfig } from 'vitest/config'

// Whole trees are proved and thousands of walks compared; nothing in a test is judged by the clock.
const testTimeout = 900_000

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**'],
          // One worker reads the modules and the shipped project once for all its files.
          isolate: false,
          // Both cores: by itself vitest leaves one idle.
          maxWorkers: 2,
          testTimeout,
          hookTimeout: testTimeout
        }
      },
      {
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['tests/browser/serve.ts'],
          testTimeout,
          hookTimeout: testTimeout,
          // One worker starts its browser once for all its files.
          isolate: false,
          // A browser waits for its page as often as it works: a third keeps both cores busy.
          maxWorkers: 3,
          sequence: { groupOrder: 1 }
        }
      }
    ]
  }
})
