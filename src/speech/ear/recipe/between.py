"""python3 between.py BEFORE.pt AFTER.pt OUT.pt: the weights half way between a member before and after it was trained further.

What was learnt before is kept better for voices that were in neither training (Wortsman et al. 2022, "Robust fine-tuning of zero-shot models").
"""
import sys

import torch


def main(before: str, after: str, out: str) -> None:
    old, new = (torch.load(path, map_location="cpu") for path in (before, after))
    model = {name: (old["model"][name] + new["model"][name]) / 2 for name in new["model"]}
    torch.save({"model": model, "recipe": {**new["recipe"], "halfWayFrom": old["recipe"]["steps"]}}, out)


if __name__ == "__main__":
    main(*sys.argv[1:4])
