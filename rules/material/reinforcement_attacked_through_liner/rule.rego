# METADATA
# title: The fluid seeps through the liner and attacks what is behind it
# description: |
#   Some fluids pass through a sound liner. The reinforcement then rots or corrodes out of sight, and
#   the hose bursts below its rating although the liner looks like new.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: pairs
#   scope: ["contact=permeated"]
#   needs: [pairs.rating]
#   message: "{fluid} passes through the liner of {part} and attacks its {layer} of {material}: {effect}"
#   action: >-
#     Fit a hose whose reinforcement and cover are also rated for this fluid, and have the braid alloy
#     verified, not read off paper.
#   basis:
#     - document: NTSB HAZ-12-01-SUM
#       edition: ""
#       clause: "accident summary"
#       standing: published
#     - document: CSB 2002-04-I-MO
#       edition: ""
#       clause: "investigation report"
#       standing: published
#     - document: CSB 2010-6-I-WV
#       edition: "2011"
#       clause: "section 4.3.2"
#       standing: published
package rules.material.reinforcement_attacked_through_liner

report contains {
	"subject": p.id,
	"part": p.part,
	"layer": p.layer,
	"material": p.material,
	"fluid": p.fluid,
	"effect": p.effect,
} if {
	some p in input.pairs.unsuitable
	p.contact == "permeated"
}
