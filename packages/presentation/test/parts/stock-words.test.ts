import { describe, expect, test } from 'vitest';
import { costText, quantityText, shareText } from '../../src/parts/stock-words.js';

describe('words of a shopping list', () => {
  test('count sheets and lengths, and measure the rest', () => {
    expect(quantityText({ quantity: 1, unit: 'sheet', atLeast: false })).toBe('1 sheet of');
    expect(quantityText({ quantity: 7, unit: 'sheet', atLeast: true })).toBe('at least 7 sheets of');
    expect(quantityText({ quantity: 8.63, unit: 'm2', atLeast: true })).toBe('8.6 m² of');
    expect(quantityText({ quantity: 48, unit: 'length', atLeast: false })).toBe('48 lengths of');
  });

  test('give money with cents only where they matter, and shares in percent', () => {
    expect(costText({ amount: 266.4, currency: 'EUR' })).toBe('266 EUR');
    expect(costText({ amount: 5.2, currency: 'EUR' })).toBe('5.20 EUR');
    expect(shareText(0.304)).toBe('30 %');
  });
});
