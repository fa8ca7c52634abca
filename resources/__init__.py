"""Data that ships with the program: icons, font, texts, schemas, demo projects."""
