import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    // Whole trees are proved and thousands of walks compared; nothing in a test is judged by the clock.
    testTimeout: 120_000
  }
})
