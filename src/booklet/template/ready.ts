/** Markdown that is ready to stand as it is. */
export class Ready {
  private readonly markdown: string;
  constructor(markdown: string) {
    this.markdown = markdown;
  }
  toString(): string {
    return this.markdown;
  }
}
