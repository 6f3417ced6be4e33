"""The page on keeping everyone safe."""
