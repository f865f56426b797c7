import { describe, it } from 'vitest';
import { expectReferences } from '../helpers/index.js';

describe('references', () => {
  it('finds the declaration and every use', () => {
    expectReferences(
      'let <|g<|>ap|> = 5 mm\nassembly a {\n  air <|gap|>\n  air <|gap|> + 2 mm\n}\nvariant v { <|gap|> = 7 mm }\n',
    );
  });

  it('tells a name in a comment or a string from a use', () => {
    expectReferences('let <|g<|>ap|> = 5 mm # gap\nassembly a "gap" {\n  air <|gap|>\n}\n');
  });
});
