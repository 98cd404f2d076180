# METADATA
# title: A wide high-pressure hose at a mine is not restrained
# description: |
#   The US mine rule wants chains or the like at the machine and at each joint of hose to hose, from
#   three quarters of an inch inside, unless a device shuts the hose off by itself.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: releases
#   scope: ["!restrained", "regime=30 CFR 56.13021"]
#   needs: [releases.bore_mm]
#   message: "A hose of run {run} is {bore_mm} wide inside and not restrained"
#   action: "Fit restraints at the machine and at each joint of hose to hose, or an automatic shut-off."
#   basis:
#     - document: 30 CFR 56.13021
#       edition: "CFR 2015 annual edition"
#       clause: "whole section"
#       standing: published
package rules.isolation.mine_hose_not_restrained

report contains {"subject": r.id, "run": r.id, "bore_mm": r.bore_mm} if {
	"30 CFR 56.13021" in input.line.regimes
	some r in input.releases
	not r.restrained
	r.bore_mm >= 19
	count({p.id | some p in input.parts; p.run == r.id; p.kind == "excess-flow"}) == 0
}
