# METADATA
# title: A container of flammable liquid is not bonded as US road law asks
# description: |
#   Before and during the transfer of a flammable liquid US road law wants containers other than cargo
#   tanks bonded, or each connected to earth, where they do not touch metal to metal.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: vessels
#   scope: [holds_flammable, holds_liquid, "regime=49 CFR 177.837"]
#   needs: [vessels.bonded]
#   absent: [vessels.kind]
#   message: "{part} holds flammable liquid and is neither bonded nor connected to earth, as the law asks"
#   action: >-
#     Bond the receiving container first, then the one it is filled from, at a point away from the
#     opening.
#   basis:
#     - document: 49 CFR 177.837
#       edition: "CFR 2015 annual edition"
#       clause: "(b)"
#       standing: published
package rules.static.vessel_not_bonded_by_law

report contains {"subject": v.id, "part": v.id} if {
	"49 CFR 177.837" in input.line.regimes
	some v in input.vessels
	v.holds_flammable
	v.holds_liquid
	v.bonded == false
	not _cargo_tank(v)
}

# The law has other terms for cargo tanks; a vessel of unknown kind is not taken for one.
_cargo_tank(v) if v.kind == "tanker"
