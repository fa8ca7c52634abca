"""How generated cases are drawn, and where windows go, for every test."""

from __future__ import annotations

import os

from hypothesis import HealthCheck, settings

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

# A slow or busy machine must not decide whether a property holds.
_UNHURRIED = settings(deadline=None, suppress_health_check=[HealthCheck.too_slow])

settings.register_profile("check", _UNHURRIED, derandomize=True, max_examples=100)
settings.register_profile("long", _UNHURRIED, max_examples=3000)
settings.load_profile(os.environ.get("EAVEWRIGHT_PROFILE", "check"))
