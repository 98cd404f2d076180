# METADATA
# title: A metal part of a closed flammable line is not bonded
# description: |
#   Inside a tight line there is no air to ignite, and US road law asks for no bond there. The part
#   still charges, and it sparks when the line is opened or leaks.
# schemas:
#   - input: schema.facts
# custom:
#   severity: note
#   subject: parts
#   scope: [carries_flammable, "!at_open_point"]
#   needs: [parts.conductor, parts.bonded]
#   message: "{part} is metal and not bonded to earth, in a line that carries a flammable fluid"
#   action: "Bond the part before the line is next opened."
#   basis:
#     - document: 49 CFR 177.837
#       edition: "CFR 2015 annual edition"
#       clause: "(c)(2)"
#       standing: published
#     - document: IEC TS 60079-32-1
#       edition: ""
#       clause: "7.7.3, hoses"
#       standing: recalled
package rules.static.isolated_conductor_in_closed_line

report contains {"subject": p.id, "part": p.id} if {
	some p in input.parts
	p.carries_flammable
	not p.at_open_point
	p.conductor == true
	p.bonded == false
}
