# METADATA
# title: A vessel with flammable liquid is not connected to earth
# description: |
#   Liquid that runs in or out charges the vessel. One that is not connected to earth sparks to the next
#   metal part or person.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: vessels
#   scope: [holds_flammable, holds_liquid]
#   needs: [vessels.bonded]
#   absent: [vessels.kind]
#   message: "{part} holds flammable liquid and is not connected to earth"
#   action: "Connect the vessel to earth before any hose is joined, and take the connection off last."
#   basis:
#     - document: IEC TS 60079-32-1
#       edition: ""
#       clause: "earthing of vessels"
#       standing: recalled
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.static.vessel_not_bonded

report contains {"subject": v.id, "part": v.id} if {
	some v in input.vessels
	v.holds_flammable
	v.holds_liquid
	v.bonded == false
	not _law_asks(v)
}

# Where US road law asks for the bond another rule speaks.
_law_asks(v) if {
	"49 CFR 177.837" in input.line.regimes
	not _cargo_tank(v)
}

_cargo_tank(v) if v.kind == "tanker"
