"""On the site: what is cut and nailed, what is stale on paper, and what a cut piece forbids."""
